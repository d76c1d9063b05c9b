using Tickover.Physics.Exhaust;

namespace Tickover.Workshop.Exhaust;

/// <summary>One reading of a four-gas analyser, in the units its display has.</summary>
/// <remarks>Dry gas: the analyser condenses the water. Ranges are those <see cref="GasEntry.Read"/> lets through.</remarks>
public sealed record GasReading
{
    private const double Percent = 100;
    private const double Million = 1e6;

    /// <summary>CO, per cent by volume, -1 to 20.</summary>
    public required double CarbonMonoxidePercent { get; init; }

    /// <summary>HC as hexane, ppm, -200 to 60 000.</summary>
    public required double HydrocarbonsPpm { get; init; }

    /// <summary>CO₂, per cent by volume, 1 to 20.</summary>
    public required double CarbonDioxidePercent { get; init; }

    /// <summary>O₂, per cent by volume, -2 to 21.5; a little below zero is the cell's zero.</summary>
    public required double OxygenPercent { get; init; }

    /// <summary>Whether CO₂ came in tenths of a per cent and was divided by ten.</summary>
    public bool DioxideWasInTenths { get; init; }

    /// <summary>λ the instrument shows; null where it was not read.</summary>
    public double? LambdaShown { get; init; }

    /// <summary>Last digit of <see cref="LambdaShown"/>: 0.001 where it has three decimals.</summary>
    public double LambdaStep { get; init; } = 0.001;

    /// <summary>Engine speed, rpm; null where it was not read.</summary>
    public double? SpeedRpm { get; init; }

    /// <summary>Oil temperature, °C; null where it was not read.</summary>
    public double? OilCelsius { get; init; }

    /// <summary>CO + CO₂, per cent by volume.</summary>
    public double CarbonSumPercent => CarbonMonoxidePercent + CarbonDioxidePercent;

    /// <summary>The reading as the chemistry takes it.</summary>
    /// <returns>Mole fractions of the dry gas.</returns>
    public ExhaustSample ToExhaustSample() => new()
    {
        CarbonMonoxide = CarbonMonoxidePercent / Percent,
        CarbonDioxide = CarbonDioxidePercent / Percent,
        Oxygen = OxygenPercent / Percent,
        Hydrocarbons = HydrocarbonsPpm / Million,
    };
}
