namespace Tickover.Bench.Peer;

/// <summary>One operating point as one of the solvers answers it; masses in kg a cycle.</summary>
internal sealed record PeerPoint
{
    internal required double Rpm { get; init; }

    internal required double Degrees { get; init; }

    internal required double Air { get; init; }

    internal required double Main { get; init; }

    /// <summary>Past the mixture screw and from the progression holes.</summary>
    internal required double Idle { get; init; }

    internal required double Pump { get; init; }

    internal required bool Settled { get; init; }

    internal required int Cycles { get; init; }

    internal double Fuel => Main + Idle + Pump;
}
