using Tickover.Workshop.Mixture;

namespace Tickover.Cli.Json;

/// <summary>One point of the map in the units a workshop reads, the unit in the name.</summary>
internal sealed record MixturePoint
{
    private const double SecondsPerHour = 3600;
    private const double MillimetresPerMetre = 1000;

    /// <summary>Engine speed, rpm.</summary>
    public required double SpeedRpm { get; init; }

    /// <summary>Opening from seated, degrees.</summary>
    public required double ThrottleDegrees { get; init; }

    /// <summary>λ, 1; null where no fuel or no air flows.</summary>
    public required double? Lambda { get; init; }

    /// <summary>Mass of air to mass of fuel, 1; null where no fuel or no air flows.</summary>
    public required double? AirFuelRatio { get; init; }

    /// <summary>Rich end of the target, λ.</summary>
    public required double TargetRichest { get; init; }

    /// <summary>Lean end of the target, λ.</summary>
    public required double TargetLeanest { get; init; }

    /// <summary>The circuit that gives most fuel.</summary>
    public required FuelCircuit Feeding { get; init; }

    /// <summary>Air through the barrel, kg/h.</summary>
    public required double AirKilogramsPerHour { get; init; }

    /// <summary>All fuel, kg/h.</summary>
    public required double FuelKilogramsPerHour { get; init; }

    /// <summary>Fuel of the main circuit, kg/h.</summary>
    public required double MainFuelKilogramsPerHour { get; init; }

    /// <summary>Fuel past the mixture screw, kg/h.</summary>
    public required double IdleFuelKilogramsPerHour { get; init; }

    /// <summary>Fuel of the progression holes, kg/h.</summary>
    public required double ProgressionFuelKilogramsPerHour { get; init; }

    /// <summary>Fuel pulled over through the pump jet, kg/h.</summary>
    public required double PumpFuelKilogramsPerHour { get; init; }

    /// <summary>Air through the air corrector, kg/h.</summary>
    public required double CorrectorAirKilogramsPerHour { get; init; }

    /// <summary>Mean depression in the auxiliary venturi, Pa.</summary>
    public required double MeanDepressionPascals { get; init; }

    /// <summary>Largest depression in the auxiliary venturi, Pa.</summary>
    public required double PeakDepressionPascals { get; init; }

    /// <summary>Absolute pressure behind the plate, Pa.</summary>
    public required double ManifoldPressurePascals { get; init; }

    /// <summary>Depth of the fuel in the emulsion tube below rest, mm.</summary>
    public required double WellDropMillimetres { get; init; }

    /// <summary>Air that flows back out as a part of what goes in, 1.</summary>
    public required double BackflowFraction { get; init; }

    /// <summary>Volumetric efficiency, 1.</summary>
    public required double VolumetricEfficiency { get; init; }

    /// <summary>Indicated mean effective pressure less friction, Pa.</summary>
    public required double BrakeMeanPressurePascals { get; init; }

    /// <summary>What to be careful about; empty where nothing is.</summary>
    public required IReadOnlyList<PointValidity> Validity { get; init; }

    /// <summary>A point as the JSON and the CSV show it.</summary>
    /// <param name="rpm">Speed, rpm.</param>
    /// <param name="degrees">Opening, degrees.</param>
    /// <param name="point">The computed point.</param>
    /// <returns>The point.</returns>
    public static MixturePoint Of(double rpm, double degrees, BarrelPoint point)
    {
        var ratio = (point.Validity & (PointValidity.NoFuel | PointValidity.NoAir)) == PointValidity.Inside;
        var target = MixtureTargets.At(degrees);
        return new MixturePoint
        {
            SpeedRpm = rpm,
            ThrottleDegrees = degrees,
            Lambda = ratio ? point.Lambda : null,
            AirFuelRatio = ratio ? point.AirFuelRatio : null,
            TargetRichest = target.Richest,
            TargetLeanest = target.Leanest,
            Feeding = point.Feeding,
            AirKilogramsPerHour = point.AirKilogramsPerSecond * SecondsPerHour,
            FuelKilogramsPerHour = point.FuelKilogramsPerSecond * SecondsPerHour,
            MainFuelKilogramsPerHour = point.MainFuelKilogramsPerSecond * SecondsPerHour,
            IdleFuelKilogramsPerHour = point.IdleFuelKilogramsPerSecond * SecondsPerHour,
            ProgressionFuelKilogramsPerHour = point.ProgressionFuelKilogramsPerSecond * SecondsPerHour,
            PumpFuelKilogramsPerHour = point.PumpFuelKilogramsPerSecond * SecondsPerHour,
            CorrectorAirKilogramsPerHour = point.CorrectorAirKilogramsPerSecond * SecondsPerHour,
            MeanDepressionPascals = point.MeanDepressionPascals,
            PeakDepressionPascals = point.PeakDepressionPascals,
            ManifoldPressurePascals = point.ManifoldPressurePascals,
            WellDropMillimetres = point.WellDropMetres * MillimetresPerMetre,
            BackflowFraction = point.BackflowFraction,
            VolumetricEfficiency = point.VolumetricEfficiency,
            BrakeMeanPressurePascals = point.BrakeMeanPressurePascals,
            Validity = [.. Enum.GetValues<PointValidity>().Where(v => v != PointValidity.Inside && point.Validity.HasFlag(v))],
        };
    }
}
