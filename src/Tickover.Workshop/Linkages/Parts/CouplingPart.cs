namespace Tickover.Workshop.Linkages.Parts;

/// <summary>A coupling between spindles in one line.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="From">Number of the driving spindle.</param>
/// <param name="To">Number of the driven spindle.</param>
public sealed record CouplingPart(string Name, int From, int To) : LinkPart(Name, From, To)
{
    /// <summary>How far the driven spindle stands further open than the driving one, degrees.</summary>
    public required double AheadDegrees { get; init; }

    /// <summary>Where it takes hold on the driving spindle, mm along.</summary>
    public required double FromAlongMillimetres { get; init; }

    /// <summary>Where on the driven spindle, mm along.</summary>
    public required double ToAlongMillimetres { get; init; }

    /// <summary>How it is set; null for a fixed one.</summary>
    public CouplingScrew? Screw { get; init; }
}
