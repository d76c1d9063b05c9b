using Tickover.Web.Visits;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Web.Worksheets;

/// <summary>A page that takes documents into the hand, whatever visit they belong to: a file, a text pasted, or a sample.</summary>
public sealed record Intake
{
    /// <summary>Its address, such as "/gauges".</summary>
    public required string Address { get; init; }

    /// <summary>Its heading, also the word that leads back to it.</summary>
    public required string Title { get; init; }

    /// <summary>What it is about.</summary>
    public required string Where { get; init; }

    /// <summary>Heading of the form.</summary>
    public required string Ask { get; init; }

    /// <summary>What is to be measured and written, in a sentence or two.</summary>
    public required string Lead { get; init; }

    /// <summary>Pages that tell how it is written down, with the words that lead there.</summary>
    public required IReadOnlyList<(string Address, string Words)> Guides { get; init; }

    /// <summary>Names of files such as are dropped here.</summary>
    public required string Example { get; init; }

    /// <summary>What the button says.</summary>
    public string Act { get; init; } = "Work it out";

    /// <summary>What stands under the form; empty for nothing.</summary>
    public string Note { get; init; } = "";

    /// <summary>What can hurt somebody, the worst first.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>The stage of a visit it is come to from; null where a visit has a page of its own for it.</summary>
    public Stage? Stage { get; init; }

    /// <summary>The kinds of document, the one that an unknown text is taken for first.</summary>
    public required IReadOnlyList<IntakeKind> Kinds { get; init; }

    /// <summary>This page, come to from a visit or from none.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>The address.</returns>
    internal string List(Id<Visit>? visit) => IntakeAddress.Of(Address, visit);

    /// <summary>Where it was come to from: the stage of a visit, or the bench.</summary>
    /// <param name="visit">The visit; null for none.</param>
    /// <returns>Address and word.</returns>
    internal (string Address, string Word) From(Id<Visit>? visit) =>
        visit is { } known && Stage is { } stage ? (Addresses.Of(known, stage), stage.Words()) : ("/bench", "Bench");
}
