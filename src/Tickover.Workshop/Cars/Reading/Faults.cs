namespace Tickover.Workshop.Cars.Reading;

/// <summary>Collects what is wrong with a document; each thing once.</summary>
/// <param name="kind">What kind of document it is, in a word.</param>
internal sealed class Faults(string kind = "car")
{
    private readonly List<Fault> _faults = [];
    private readonly List<Fault> _warnings = [];
    private readonly HashSet<Fault> _seen = [];

    /// <summary>What kind of document it is, in a word.</summary>
    public string Kind => kind;

    /// <summary>The guide to such documents.</summary>
    public string Guide => $"docs/{kind}-document.md";

    /// <summary>What makes the document unusable.</summary>
    public IReadOnlyList<Fault> All => _faults;

    /// <summary>What is accepted but unusual.</summary>
    public IReadOnlyList<Fault> Warnings => _warnings;

    /// <summary>Adds a fault.</summary>
    /// <param name="path">Where.</param>
    /// <param name="problem">What, with what was found.</param>
    /// <param name="allowed">What is allowed.</param>
    /// <param name="whatToDo">The way out.</param>
    public void Add(string path, string problem, string allowed, string whatToDo) => Once(new Fault(path, problem, allowed, whatToDo), _faults);

    /// <summary>Adds a warning.</summary>
    /// <param name="path">Where.</param>
    /// <param name="problem">What.</param>
    /// <param name="allowed">What is usual.</param>
    /// <param name="whatToDo">What to look at.</param>
    public void Warn(string path, string problem, string allowed, string whatToDo) => Once(new Fault(path, problem, allowed, whatToDo), _warnings);

    /// <summary>A value of the wrong kind.</summary>
    /// <param name="path">Where.</param>
    /// <param name="found">What stands there.</param>
    /// <param name="wanted">What should stand there.</param>
    /// <param name="example">An example of it.</param>
    public void WrongKind(string path, SourceNode found, string wanted, string example) =>
        Add(path, $"Found {found.Described}", wanted, $"Write {example}.");

    /// <summary>A member that must be there.</summary>
    /// <param name="path">Where it should stand.</param>
    /// <param name="what">What it is.</param>
    /// <param name="allowed">What is allowed.</param>
    /// <param name="example">An example.</param>
    public void Missing(string path, string what, string allowed, string example) =>
        Add(path, $"{what} is missing", allowed, $"Add {example}.");

    /// <summary>A member nobody knows.</summary>
    /// <param name="path">Where it stands.</param>
    /// <param name="name">Its name.</param>
    /// <param name="known">The names known there.</param>
    public void Unknown(string path, string name, IReadOnlyCollection<string> known)
    {
        var near = Spelling.Nearest(name, known);
        Add(
            path,
            "This member is not known here",
            $"the members that {Guide} lists",
            near is null ? "Take it out, or check where it belongs." : $"Did you mean \"{near}\"?");
    }

    private void Once(Fault fault, List<Fault> to)
    {
        if (_seen.Add(fault))
        {
            to.Add(fault);
        }
    }
}
