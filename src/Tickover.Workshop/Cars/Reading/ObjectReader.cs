using System.Globalization;

namespace Tickover.Workshop.Cars.Reading;

/// <summary>Reads the members of one object and says what is wrong with them.</summary>
internal sealed class ObjectReader
{
    /// <summary>More unknown members than this are counted, not listed.</summary>
    private const int MostUnknownListed = 20;

    private readonly SourceNode _node;

    /// <summary>Reads an object; its members are checked at once.</summary>
    /// <param name="node">The object.</param>
    /// <param name="path">Where it stands; empty for the document itself.</param>
    /// <param name="known">Names known in it.</param>
    /// <param name="faults">Where faults go.</param>
    public ObjectReader(SourceNode node, string path, IReadOnlyList<string> known, Faults faults)
    {
        _node = node;
        Path = path;
        Faults = faults;
        CheckMembers(known);
    }

    /// <summary>Where the object stands.</summary>
    public string Path { get; }

    /// <summary>Where faults go.</summary>
    public Faults Faults { get; }

    /// <summary>The value of a member.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>The value, or null where it is absent.</returns>
    public SourceNode? this[string name] => _node[name];

    /// <summary>The path of a member.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>The path.</returns>
    public string At(string name) => Path.Length == 0 ? name : $"{Path}.{name}";

    /// <summary>Opens a member that is an object.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="known">Names known in it.</param>
    /// <returns>The object, or null where it is absent or something else.</returns>
    public ObjectReader? Object(string name, IReadOnlyList<string> known)
    {
        var node = this[name];
        if (node is not null && node.Kind != SourceKind.Object)
        {
            Faults.WrongKind(At(name), node, "an object in braces", $"\"{name}\": {{ … }}");
            return null;
        }

        return node is null ? null : new ObjectReader(node, At(name), known, Faults);
    }

    /// <summary>Reads a member that is a text.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="example">An example of it.</param>
    /// <returns>The text without outer blanks, or null where it is absent or faulty.</returns>
    public string? Text(string name, string example)
    {
        var node = this[name];
        var text = node?.Kind == SourceKind.Text ? node.Text.Trim() : null;
        if (node is not null && text is null or { Length: 0 or > DocumentForm.LongestText })
        {
            Faults.WrongKind(At(name), node!, $"a text of 1 to {DocumentForm.LongestText} letters", $"\"{name}\": \"{example}\"");
            return null;
        }

        return text;
    }

    /// <summary>Reads a member that is a list.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="example">An example of it.</param>
    /// <returns>The items, or null where it is absent or something else.</returns>
    public IReadOnlyList<SourceNode>? List(string name, string example)
    {
        var node = this[name];
        if (node is not null && node.Kind != SourceKind.List)
        {
            Faults.WrongKind(At(name), node, "a list in brackets", $"\"{name}\": {example}");
            return null;
        }

        return node?.Items;
    }

    /// <summary>Reads a list of numbers of cylinders.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="cylinders">Number of cylinders.</param>
    /// <param name="example">An example of it.</param>
    /// <returns>The numbers, each once and in range, or null where it is absent or faulty.</returns>
    public IReadOnlyList<int>? CylinderNumbers(string name, int cylinders, string example) =>
        List(name, example) is { } items ? CylinderNumbers(At(name), items, cylinders) : null;

    /// <summary>Reads numbers of cylinders.</summary>
    /// <param name="path">Where they stand.</param>
    /// <param name="items">The items.</param>
    /// <param name="cylinders">Number of cylinders.</param>
    /// <returns>The numbers, each once and in range, or null where one is faulty.</returns>
    public IReadOnlyList<int>? CylinderNumbers(string path, IReadOnlyList<SourceNode> items, int cylinders)
    {
        var numbers = new List<int>();
        var sound = true;
        foreach (var item in items.Take(cylinders + 1))
        {
            if (item.Kind != SourceKind.Number || !int.TryParse(item.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number < 1 || number > cylinders)
            {
                Faults.Add(path, $"{item.Described} is no cylinder of this engine", $"whole numbers from 1 to {cylinders}", "Write the numbers of the cylinders without quotes.");
                sound = false;
            }
            else if (numbers.Contains(number))
            {
                Faults.Add(path, $"Cylinder {number} stands twice", "each cylinder once", "Take one out.");
                sound = false;
            }
            else
            {
                numbers.Add(number);
            }
        }

        return sound ? numbers : null;
    }

    private void CheckMembers(IReadOnlyList<string> known)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var knownHere = known.ToHashSet(StringComparer.Ordinal);
        var unknown = 0;
        foreach (var name in _node.Members.Select(m => m.Name))
        {
            if (!seen.Add(name))
            {
                Faults.Add(At(Shortened(name)), "This member stands twice", "each member once", "Take out the one that is wrong.");
            }
            else if (!knownHere.Contains(name) && ++unknown <= MostUnknownListed)
            {
                Faults.Unknown(At(Shortened(name)), name, known);
            }
        }

        if (unknown > MostUnknownListed)
        {
            Faults.Add(Path.Length == 0 ? "document" : Path, $"{unknown} members are not known here", $"the members that {Faults.Guide} lists", $"Check that this is a {Faults.Kind} document.");
        }

        if (_node["note"] is { Kind: not SourceKind.Text } note)
        {
            Faults.WrongKind(At("note"), note, "a text", "\"note\": \"…\"");
        }
    }

    private static string Shortened(string name) => name.Length <= DocumentForm.LongestText ? name : name[..DocumentForm.LongestText] + "…";
}
