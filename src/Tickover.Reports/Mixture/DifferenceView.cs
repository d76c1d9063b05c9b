using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>What is to be shown of a trial against what is fitted.</summary>
public sealed record DifferenceView
{
    /// <summary>The map of what is fitted.</summary>
    public required MixtureMap Fitted { get; init; }

    /// <summary>The map of the trial, over the same grid.</summary>
    public required MixtureMap Trial { get; init; }

    /// <summary>The barrel shown, from 1.</summary>
    public required int BarrelNumber { get; init; }

    /// <summary>The size.</summary>
    public PictureSize Size { get; init; } = PictureSize.Full;

    /// <summary>The place tapped, marked by a ring; null for none.</summary>
    public MapSpot? Tapped { get; init; }

    /// <summary>Begins every id in the drawing; must differ between drawings on one page. Letters, digits, hyphens.</summary>
    public string IdPrefix { get; init; } = "difference";
}
