using System.Runtime.Intrinsics;

namespace Tickover.Physics.Breathing;

/// <summary>Four operating points that are integrated together: they share the crank angle, not the time.</summary>
internal sealed class LaneConditions
{
    private const double HohenbergSpeedOffset = 1.4;   // m/s, breathing (10), from memory
    private const double HohenbergSpeedExponent = 0.8;

    internal LaneConditions(IReadOnlyList<double> rpm, EngineSpec engine, double stepDegrees)
    {
        Rpm = Vector256.Create(rpm[0], rpm[1], rpm[2], rpm[3]);
        DegreesPerSecond = Rpm * 6.0;
        StepSeconds = Vector256.Create(stepDegrees) / DegreesPerSecond;
        var speed = new double[4];
        for (var l = 0; l < 4; l++)
        {
            var pistonSpeed = 2 * engine.Cylinder.StrokeMetres * rpm[l] / 60;
            speed[l] = Math.Pow(pistonSpeed + HohenbergSpeedOffset, HohenbergSpeedExponent);
        }

        WallSpeedFactor = Vector256.Create(speed[0], speed[1], speed[2], speed[3]);
    }

    /// <summary>Engine speed, rpm.</summary>
    internal Vector256<double> Rpm { get; }

    /// <summary>Crank speed, degrees a second.</summary>
    internal Vector256<double> DegreesPerSecond { get; }

    /// <summary>Length of a step, s.</summary>
    internal Vector256<double> StepSeconds { get; }

    /// <summary>Hohenberg's factor of piston speed.</summary>
    internal Vector256<double> WallSpeedFactor { get; }
}
