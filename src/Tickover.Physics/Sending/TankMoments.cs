namespace Tickover.Physics.Sending;

/// <summary>What happened over a drive, at equal steps of time; all arrays of one length.</summary>
public sealed record TankMoments
{
    /// <summary>Time between moments, s.</summary>
    public required double EverySeconds { get; init; }

    /// <summary>Fuel in the left tank, m³.</summary>
    public required IReadOnlyList<double> LeftVolumes { get; init; }

    /// <summary>Fuel in the right tank, m³.</summary>
    public required IReadOnlyList<double> RightVolumes { get; init; }

    /// <summary>Level in the middle of the left tank, m above its floor.</summary>
    public required IReadOnlyList<double> LeftLevels { get; init; }

    /// <summary>Level in the middle of the right tank, m above its floor.</summary>
    public required IReadOnlyList<double> RightLevels { get; init; }

    /// <summary>Slope of the surface in the left tank, rise to the left over run, with its slosh.</summary>
    public required IReadOnlyList<double> LeftSlopes { get; init; }

    /// <summary>The same in the right tank.</summary>
    public required IReadOnlyList<double> RightSlopes { get; init; }

    /// <summary>Flow in the cross-pipe, m³/s, positive from left to right.</summary>
    public required IReadOnlyList<double> PipeFlows { get; init; }

    /// <summary>Level at the first sender, m above its tank's floor, within floor and roof.</summary>
    public required IReadOnlyList<double> SenderLevels { get; init; }

    /// <summary>The first sender's travel between its stops, 1.</summary>
    public required IReadOnlyList<double> Travels { get; init; }

    /// <summary>Resistance the gauge sees, Ω.</summary>
    public required IReadOnlyList<double> Ohms { get; init; }

    /// <summary>Where the needle points, 0 at E, 1 at F.</summary>
    public required IReadOnlyList<double> Needles { get; init; }

    /// <summary>Whether the lamp is lit.</summary>
    public required IReadOnlyList<bool> Lamps { get; init; }

    /// <summary>Whether the pick-up is covered.</summary>
    public required IReadOnlyList<bool> Covered { get; init; }

    /// <summary>Forward acceleration, m/s².</summary>
    public required IReadOnlyList<double> Ahead { get; init; }

    /// <summary>Acceleration to the left, m/s².</summary>
    public required IReadOnlyList<double> Left { get; init; }

    /// <summary>Part of the moments in which a surface met a floor's or a roof's edge, where the straight surface is no longer the truth.</summary>
    public required Validity Validity { get; init; }

    /// <summary>Moments.</summary>
    public int Count => Needles.Count;

    /// <summary>Fuel in both tanks, m³.</summary>
    /// <param name="moment">Which moment.</param>
    /// <returns>m³.</returns>
    public double Total(int moment) => LeftVolumes[moment] + RightVolumes[moment];
}
