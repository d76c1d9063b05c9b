using Tickover.Physics.Tanks;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Tanks;

namespace Tickover.Reports.Tanks;

/// <summary>What the picture of tanks shows.</summary>
public sealed record TankView
{
    private const double Hundred = 100;

    /// <summary>The tanks; at least one is described.</summary>
    public required TankAnalysis Analysis { get; init; }

    /// <summary>Fuel in all of them, l.</summary>
    public required double Litres { get; init; }

    /// <summary>How much the nose is up, per cent.</summary>
    public double NoseUp { get; init; }

    /// <summary>How much the left side is up, per cent.</summary>
    public double LeftUp { get; init; }

    /// <summary>For a wide page or for a phone.</summary>
    public PictureSize Size { get; init; }

    /// <summary>Begins every id inside, so that several pictures live on one page.</summary>
    public required string IdPrefix { get; init; }

    /// <summary>The fuel as it lies.</summary>
    public TankMoment Moment => field ??= TankMoment.Of(Analysis, Litres, new Tilt(NoseUp / Hundred, LeftUp / Hundred))
        ?? throw new InvalidOperationException("No tank is described; there is nothing to draw.");

    /// <summary>Height of what the pick-up cannot reach with the car level, m; null without a pick-up, or where the car does not stand level.</summary>
    public double? Reach => NoseUp == 0 && LeftUp == 0 && Analysis.UnusableLitres is { } unusable and > 0 ? TankMoment.Of(Analysis, unusable, Tilt.Level)?.LevelMetres : null;
}
