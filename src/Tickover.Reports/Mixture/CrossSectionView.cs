using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>Where a map is cut and what is to be shown of it.</summary>
public sealed record CrossSectionView
{
    /// <summary>The map of what is fitted.</summary>
    public required MixtureMap Fitted { get; init; }

    /// <summary>The map of a trial; null for none.</summary>
    public MixtureMap? Trial { get; init; }

    /// <summary>The barrel shown, from 1.</summary>
    public required int BarrelNumber { get; init; }

    /// <summary>The place the cut goes through.</summary>
    public required MapSpot Spot { get; init; }

    /// <summary>Along which axis it goes.</summary>
    public required CrossSectionAxis Axis { get; init; }

    /// <summary>The size.</summary>
    public PictureSize Size { get; init; } = PictureSize.Full;

    /// <summary>Begins every id in the drawing; must differ between drawings on one page. Letters, digits, hyphens.</summary>
    public string IdPrefix { get; init; } = "cut";
}
