using Tickover.Physics.Walls;
using Tickover.Workshop.Cars.Reading;

namespace Tickover.Workshop.Walls.Reading;

/// <summary>Reads names of metals.</summary>
internal static class Metals
{
    /// <summary>A metal that must be there.</summary>
    public static Metal Needed(ObjectReader reader, string name, IReadOnlyList<Metal> allowed)
    {
        var words = MetalWords.Names.Where(n => allowed.Contains(MetalWords.Read(n)!.Value)).ToArray();
        var listed = string.Join(", ", allowed.Select(m => $"\"{MetalWords.Of(m)}\""));
        if (reader[name] is null)
        {
            reader.Faults.Missing(reader.At(name), "The metal", listed, $"\"{name}\": \"{words[0]}\"");
            return allowed[0];
        }

        if (reader.Text(name, words[0]) is not { } text)
        {
            return allowed[0];
        }

        if (MetalWords.Read(text) is { } metal && allowed.Contains(metal))
        {
            return metal;
        }

        var near = Spelling.Nearest(text, words);
        reader.Faults.Add(reader.At(name), $"\"{text}\" is no metal known here", listed, near is null ? "Take the nearest of these by what it is made of; plastics do not rust and are not judged here." : $"Did you mean \"{near}\"?");
        return allowed[0];
    }
}
