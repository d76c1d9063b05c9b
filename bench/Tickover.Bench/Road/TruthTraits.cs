namespace Tickover.Bench.Road;

/// <summary>How a virtual car differs from the model: in the figures the calibration knows, and in laws it does not.</summary>
/// <remarks>All ranges are assumed, drawn evenly; those of the figures follow the spreads of the trade, docs/studies.md.</remarks>
internal sealed record TruthTraits
{
    /// <summary>Values of the calibration's own unknowns but the first (signal), which <see cref="Signal"/> replaces.</summary>
    internal required double[] Figures { get; init; }

    /// <summary>Logarithm of the auxiliary venturi's gain against the model's.</summary>
    internal required double Signal { get; init; }

    /// <summary>Other booster law: the gain's logarithm changes by so much each time the air grows by e.</summary>
    internal required double SignalSlope { get; init; }

    /// <summary>Other discharge law: what a tenfold Reynolds number adds to the main fuel's logarithm about 3 000, levelling off.</summary>
    internal required double JetReynolds { get; init; }

    /// <summary>Jets that are not quite their number: power of (bore over the sample's bore) on the main fuel.</summary>
    internal required double MainBorePower { get; init; }

    /// <summary>The same for the fuel of the idle jet.</summary>
    internal required double IdleBorePower { get; init; }

    /// <summary>Part of the other bank's mixture that a bank draws nearly shut, fading as the throttle opens.</summary>
    internal required double CrossTalk { get; init; }

    /// <summary>Standing-off fuel drawn by a neighbour, wide open: size, waves over the speed range, phase.</summary>
    internal required (double Size, double Waves, double Phase) StandOff { get; init; }

    /// <summary>What no law explains: size, waves over speed, waves over opening, phase; three of them.</summary>
    internal required (double Size, double Speed, double Opening, double Phase)[] Remainder { get; init; }

    /// <summary>Each bank's own: logarithms of main and idle fuel, lower level in mm.</summary>
    internal required (double Main, double Idle, double Level)[] Banks { get; init; }

    /// <summary>Zero of the throttle reading, degrees: true opening less reading.</summary>
    internal required double ThrottleZero { get; init; }

    /// <summary>Error of each bank's λ sensor, logarithm.</summary>
    internal required double[] SensorBias { get; init; }

    internal static TruthTraits Drawn(Draw draw, int banks)
    {
        var zero = draw.Within(0.5);
        return new TruthTraits
        {
            Figures = [0, draw.Within(0.08), draw.Within(0.12), draw.Within(0.20), draw.Within(0.30), draw.Within(0.12), draw.Within(1.0), draw.Within(0.06), 0, draw.Within(0.15)],
            Signal = draw.Within(0.20),
            SignalSlope = draw.Within(0.08),
            JetReynolds = draw.Within(0.05),
            MainBorePower = draw.Within(0.25),
            IdleBorePower = draw.Within(0.25),
            CrossTalk = banks > 1 ? draw.Between(0, 0.15) : 0,
            StandOff = (draw.Between(0, 0.03), draw.Between(1, 2.5), draw.Between(0, 2 * Math.PI)),
            Remainder = [.. Enumerable.Range(0, 3).Select(_ => (draw.Between(0, 0.012), draw.Between(0.3, 1.5), draw.Between(0.3, 1.5), draw.Between(0, 2 * Math.PI)))],
            Banks = [.. Enumerable.Range(0, banks).Select(_ => banks > 1 ? (draw.Within(0.02), draw.Within(0.03), draw.Within(0.4)) : (0, 0, 0))],
            ThrottleZero = zero,
            SensorBias = [.. Enumerable.Range(0, banks).Select(_ => draw.Within(0.012))],
        };
    }
}
