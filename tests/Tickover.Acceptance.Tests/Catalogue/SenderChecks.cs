using Tickover.Physics.Gauges;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Senders, float arms, and what a gauge of another family shows.</summary>
public static class SenderChecks
{
    private const string Owners = "Owners' questions about boats' fuel gauges: table of 240, 188, 136, 84, 33 Ω";
    private const string Mismatch = "Straight scale of 240 to 33 Ω, evaluated independently (a forum's 0.64 for the second is wrong)";
    private const string Arm = "Arc sine of height over arm, evaluated independently";

    public static CheckGroup Group { get; } = new("Senders and gauges", [.. Table(), .. Wrong(), .. Arms()]);

    private static IEnumerable<OutsideCheck> Table() => new[] { (0.25, 188.0), (0.5, 136.0), (0.75, 84.0), (1.0, 33.0) }.Select(row => new OutsideCheck
    {
        Subject = FormattableString.Invariant($"sender of 240 to 33 Ω at {100 * row.Item1:0} % of its way"),
        Quantity = "resistance",
        Source = Owners,
        Kind = SourceKind.Published,
        Published = row.Item2,
        Unit = "Ω",
        Tolerance = 0.01,
        Ours = () => SenderFamily.Of("240-33")!.OhmsAt(row.Item1),
    });

    private static IEnumerable<OutsideCheck> Wrong() =>
    [
        new OutsideCheck
        {
            Subject = "sender of 75 to 10 Ω, empty, on a gauge for 240 to 33 Ω",
            Quantity = "needle",
            Source = Mismatch,
            Kind = SourceKind.Derived,
            Published = 0.797,
            Unit = "of the scale",
            Tolerance = 1e-3,
            Ours = () => new GaugeLaw { Family = SenderFamily.Of("240-33")! }.Free(75),
        },
        new OutsideCheck
        {
            Subject = "sender of 75 to 10 Ω on a gauge for 240 to 33 Ω",
            Quantity = "way at which the needle reaches F",
            Source = Mismatch,
            Kind = SourceKind.Derived,
            Published = 0.646,
            Unit = "of the way",
            Tolerance = 1e-3,
            Ours = () =>
            {
                var (sender, gauge) = (new SenderFamily("75-10", 75, 10), new GaugeLaw { Family = SenderFamily.Of("240-33")! });
                var (low, high) = (0.0, 1.0);
                while (high - low > 1e-12)
                {
                    var middle = (low + high) / 2;
                    (low, high) = gauge.Free(sender.OhmsAt(middle)) < 1 ? (middle, high) : (low, middle);
                }

                return low;
            },
        },
    ];

    private static IEnumerable<OutsideCheck> Arms() => new[] { (0.02, -33.749), (0.07, -16.128), (0.17, 16.128), (0.22, 33.749) }.Select(row => new OutsideCheck
    {
        Subject = FormattableString.Invariant($"float arm of 180 mm, pivot 120 mm up, fuel {1000 * row.Item1:0} mm deep"),
        Quantity = "angle of the arm",
        Source = Arm,
        Kind = SourceKind.Derived,
        Published = row.Item2,
        Unit = "°",
        Tolerance = 5e-5,
        Ours = () => double.RadiansToDegrees(FloatArm.Between(0.12, 0.18, 0.02, 0.22).AngleAt(row.Item1)),
    });
}
