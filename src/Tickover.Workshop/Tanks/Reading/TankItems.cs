using Tickover.Workshop.Cars.Reading;

namespace Tickover.Workshop.Tanks.Reading;

/// <summary>Reads lists of objects.</summary>
internal static class TankItems
{
    /// <summary>The objects of a list, each with its members checked; none where the list is absent.</summary>
    public static IReadOnlyList<ObjectReader> Items(this ObjectReader reader, string list, IReadOnlyList<string> known, string example)
    {
        var items = reader.List(list, $"[{example}]") ?? [];
        if (items.Count > TankForm.MostLines)
        {
            reader.Faults.Add(reader.At(list), $"{items.Count} lines", $"at most {TankForm.MostLines}", "Leave some out.");
            return [];
        }

        var read = new List<ObjectReader>();
        for (var i = 0; i < items.Count; i++)
        {
            var path = $"{reader.At(list)}[{i}]";
            if (items[i].Kind == SourceKind.Object)
            {
                read.Add(new ObjectReader(items[i], path, known, reader.Faults));
            }
            else
            {
                reader.Faults.WrongKind(path, items[i], "an object in braces", example);
            }
        }

        return read;
    }
}
