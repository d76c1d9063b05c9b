namespace Tickover.Physics.Breathing;

/// <summary>What depends on the crank angle alone, tabulated once for an engine at the ends of equal steps.</summary>
/// <remarks>Index i is the angle i·720/N behind firing top dead centre of the cylinder; index N repeats index 0.</remarks>
internal sealed class CycleTables
{
    private const double HohenbergFactor = 130;        // W/(m² K), breathing (10), from memory
    private const double HohenbergVolumeExponent = -0.06;
    private const double WiebeCompleteness = 6.908;    // -ln 0.001: 99.9 % burnt at the end, breathing (9)
    private const double WiebeExponent = 2;

    internal CycleTables(EngineSpec engine, int steps)
    {
        Steps = steps;
        StepDegrees = 720.0 / steps;
        Volume = new double[steps + 1];
        VolumeSlope = new double[steps + 1];
        IntakeArea = new double[steps + 1];
        ExhaustArea = new double[steps + 1];
        HeatArea = new double[steps + 1];
        BurnRate = new double[steps + 1];
        var crank = new CrankMotion(engine.Cylinder);
        for (var i = 0; i <= steps; i++)
        {
            Fill(engine, crank, i % steps, i);
        }
    }

    internal int Steps { get; }

    internal double StepDegrees { get; }

    /// <summary>Cylinder volume, m³.</summary>
    internal double[] Volume { get; }

    /// <summary>Slope of the volume, m³ a degree.</summary>
    internal double[] VolumeSlope { get; }

    /// <summary>Effective area of the inlet valves, m².</summary>
    internal double[] IntakeArea { get; }

    /// <summary>Effective area of the exhaust valves, m².</summary>
    internal double[] ExhaustArea { get; }

    /// <summary>Hohenberg's constant times volume factor times wall area, W/K before the factors of pressure, temperature and speed.</summary>
    internal double[] HeatArea { get; }

    /// <summary>Part of the fresh gas still there that burns in a degree.</summary>
    internal double[] BurnRate { get; }

    private void Fill(EngineSpec engine, CrankMotion crank, int at, int i)
    {
        var degrees = at * StepDegrees;
        var motion = crank.At(degrees);
        Volume[i] = motion.VolumeCubicMetres;
        VolumeSlope[i] = motion.SlopeCubicMetresPerDegree;
        IntakeArea[i] = ValveLift.EffectiveArea(engine.IntakeValve, degrees);
        ExhaustArea[i] = ValveLift.EffectiveArea(engine.ExhaustValve, degrees);
        var wall = 2 * engine.Cylinder.PistonAreaSquareMetres
            + 4 * (motion.VolumeCubicMetres) / engine.Cylinder.BoreMetres;
        HeatArea[i] = HohenbergFactor * Math.Pow(motion.VolumeCubicMetres, HohenbergVolumeExponent) * wall;
        BurnRate[i] = Burn(engine.Combustion, degrees);
    }

    // breathing (9): Wiebe's curve as the hazard of the fresh gas, so that the burnt part needs no memory of the start
    private static double Burn(Combustion combustion, double degrees)
    {
        var since = degrees > 360 ? degrees - 720 - combustion.StartDegrees : degrees - combustion.StartDegrees;
        var s = since / combustion.DurationDegrees;
        return s is <= 0 or >= 1
            ? 0
            : WiebeCompleteness * (WiebeExponent + 1) / combustion.DurationDegrees * Math.Pow(s, WiebeExponent);
    }
}
