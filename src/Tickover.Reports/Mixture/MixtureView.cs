using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>What is to be shown of a mixture map, and how.</summary>
public sealed record MixtureView
{
    /// <summary>The map.</summary>
    public required MixtureMap Map { get; init; }

    /// <summary>The barrel shown, from 1.</summary>
    public required int BarrelNumber { get; init; }

    /// <summary>The size.</summary>
    public PictureSize Size { get; init; } = PictureSize.Full;

    /// <summary>The scale of colours; null takes it from this map. Give one where fitted and trial stand side by side.</summary>
    public LambdaScale? Scale { get; init; }

    /// <summary>The place tapped, marked by a ring; null for none.</summary>
    public MapSpot? Tapped { get; init; }

    /// <summary>Measured points; empty where nothing is measured.</summary>
    public IReadOnlyList<MeasuredPoint> Measured { get; init; } = [];

    /// <summary>What the sentence speaks of, such as "Bank 1"; null names the barrels.</summary>
    public string? Subject { get; init; }

    /// <summary>Begins every id in the drawing; must differ between drawings on one page. Letters, digits, hyphens.</summary>
    public string IdPrefix { get; init; } = "mixture";

    internal BarrelMap Barrel => Map.ForBarrel(BarrelNumber);

    internal LambdaScale ScaleInUse => Scale ?? LambdaScale.For(Barrel);
}
