using Tickover.Workshop.Visits;

namespace Tickover.Web.Worksheets;

/// <summary>A kind of worksheet a visit may keep.</summary>
/// <param name="Key">Its word in addresses, such as "plan".</param>
/// <param name="Format">What its document's format says.</param>
/// <param name="Stage">The stage it belongs to.</param>
/// <param name="Title">What it is about, as a heading.</param>
/// <param name="Lead">What to measure, in a sentence.</param>
/// <param name="Guide">The page that tells how it is written down.</param>
/// <param name="Read">Reads a document: the name in it, and what is wrong with it.</param>
/// <param name="PageOf">The page that works with it on a visit.</param>
public sealed record WorksheetForm(
    string Key, string Format, Stage Stage, string Title, string Lead, string Guide, Func<string, (string Name, IReadOnlyList<string> Faults)> Read, Func<Id<Visit>, string> PageOf)
{
    /// <summary>What the files of its samples end in.</summary>
    public string SampleEnding => $".{Key}.json";

    /// <summary>What can hurt somebody while it is measured, the worst first; empty where nothing of its own.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];
}
