using Tickover.Physics.Gauges;
using Tickover.Physics.Sending;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Tanks that feed each other, waves in them, the float's arm and the standard manoeuvres.</summary>
public static class SendingChecks
{
    private const string Schoolbook = "Class XI physics text, oscillating water column, 20 cm in each leg";
    private const string Independent = "Unsteady Bernoulli of two tanks, 4th-order Runge-Kutta worked out independently";
    private const string Schaschke = "C. Schaschke, Fluid Mechanics: Worked Examples for Engineers, Ex 6.6 p 153";
    private const string Trade = "Workshop estimate v = √(2gh/(1 + K + fL/d)), K 2, f 0.03, worked out independently";
    private const string Waves = "ω² = gk tanh kh evaluated independently";
    private const string Munson = "Munson, Young and Okiishi, Fundamentals of Fluid Mechanics, Ex 8.2 p 412";
    private const double TextbookGravity = 9.81;

    public static CheckGroup Group { get; } = new(
        "Tanks that feed each other and the gauge",
        [.. Columns(), .. Equalising(), .. Minutes(), .. Sloshing(), .. Roads(), Poiseuille(), .. Circuits()]);

    private static TwoTanks Pair(double left, double right, CrossPipe pipe, double height = 4) => new(Tank(left, height), Tank(right, height), pipe)
    {
        Sender = new TankSender(default, FloatArm.Between(0.5, 0.8, 0, 1)),
        Gauge = new FuelGauge { Circuit = new GaugeCircuit { Sender = SenderFamily.Of("240-33")! } },
    };

    private static LinkedTank Tank(double area, double height) =>
        new() { Table = LevelTable.Box(area, height), LeftMetres = 0, WidthMetres = Math.Sqrt(area), LengthMetres = Math.Sqrt(area) };

    private static CrossPipe Pipe(double bore, double length, double loss, double? friction = 0) =>
        new() { BoreMetres = bore, LengthMetres = length, FrictionFactor = friction, LossToLeft = loss, LossToRight = loss, EndCorrected = false };

    private static double Crossing(TwoTanks tanks, (double Left, double Right) start, double seconds, int which)
    {
        var moments = tanks.Run(RoadTrace.Standing(seconds, 0.005), start, 0.005).Moments;
        double Difference(SendingMoment m) => tanks.Left.Table.LevelOf(m.LeftCubicMetres) - tanks.Right.Table.LevelOf(m.RightCubicMetres);
        var pairs = moments.Zip(moments.Skip(1)).Where(p => Difference(p.First) * Difference(p.Second) <= 0).Select(p =>
            p.First.Seconds + 0.005 * Difference(p.First) / (Difference(p.First) - Difference(p.Second)));
        return pairs.ElementAt(which);
    }

    private static IEnumerable<OutsideCheck> Columns()
    {
        // A U-tube: two legs of the pipe's own bore; the column in the pipe and both legs count, so the pipe is given the whole length.
        var bore = Math.Sqrt(4 * 1e-4 / Math.PI);
        var tube = Pair(1e-4, 1e-4, Pipe(bore, 0.40, 0), 1);
        var plain = Pair(0.06, 0.06, Pipe(0.025, 0.8, 0), 1);
        var lossy = plain with { Pipe = Pipe(0.025, 0.8, 2.5) };
        return
        [
            One("water in a U-tube, 20 cm in each leg", "period", Schoolbook, SourceKind.Published, 0.9, "s", 0.005, () => 2 * (Crossing(tube, (0.21e-4, 0.19e-4), 2, 1) - Crossing(tube, (0.21e-4, 0.19e-4), 2, 0))),
            One("tanks of 0.06 m², pipe of 25 mm and 0.8 m without losses, 0.10 m apart", "period", Independent, SourceKind.Derived, 14.027, "s", 1e-3, () => 2 * (Crossing(plain, Start, 20, 1) - Crossing(plain, Start, 20, 0))),
            One("the same with ΣK 2.5", "first level after", Independent, SourceKind.Derived, 11.519, "s", 1e-3, () => Crossing(lossy, Start, 20, 0)),
            One("the same with ΣK 2.5", "overshoot", Independent, SourceKind.Derived, 5.24, "mm", 5e-3, () => -1e3 * lossy.Run(RoadTrace.Standing(30, 0.005), Start, 0.05).Moments.Min(m => (m.LeftCubicMetres - m.RightCubicMetres) / 0.06)),
        ];
    }

    private static (double Left, double Right) Start => (0.06 * 0.45, 0.06 * 0.35);

    private static IEnumerable<OutsideCheck> Equalising()
    {
        static double Orifice(double left, double right, double area, double discharge, double from, double to)
        {
            // A hole as the shortest pipe, its column without weight, its only loss that of the discharge coefficient.
            var pipe = Pipe(Math.Sqrt(4 * area / Math.PI), 1e-3, 1 / (discharge * discharge));
            var low = 0.5;
            return Pair(left, right, pipe).SecondsToLevel((left * (low + from), right * low), to, 600)!.Value * Math.Sqrt(RoadSample.Gravity / TextbookGravity);
        }

        return
        [
            One("tanks of 8 and 4 m², hole of 0.01 m², Cd 0.62, from 0.3 to 0.1 m", "time", Schaschke, SourceKind.Published, 44.957, "s", 2e-3, () => Orifice(8, 4, 0.01, 0.62, 0.3, 0.1)),
            One("tanks of 2 and 0.8 m², hole of 10 cm, Cd 0.7, from 1.5 to 0.5 m", "time", "Textbook problem, answer worked out independently", SourceKind.Derived, 24.29, "s", 2e-3, () => Orifice(2, 0.8, Math.PI / 400, 0.7, 1.5, 0.5)),
        ];
    }

    private static IEnumerable<OutsideCheck> Minutes()
    {
        (double Bore, double Published)[] rows = [(6, 38), (8, 19), (10, 12), (12, 8), (16, 4), (22, 2)];
        return rows.Select(row => One(
            FormattableString.Invariant($"two tanks of 0.25 m², pipe of {row.Bore:0} mm and 1.2 m, 200 mm apart to 5 mm"),
            "minutes to level",
            Trade,
            SourceKind.CommonPractice,
            row.Published,
            "min",
            0.13,
            () => Pair(0.25, 0.25, Pipe(row.Bore / 1e3, 1.2, 3, 0.03)).SecondsToLevel((0.25 * 0.4, 0.25 * 0.2), 0.005)!.Value / 60) with
        {
            Note = "the estimate is printed in whole minutes",
        });
    }

    private static IEnumerable<OutsideCheck> Sloshing()
    {
        static OutsideCheck Period(double span, double depth, double published, string source, SourceKind kind, double tolerance) => One(
            FormattableString.Invariant($"fuel {depth * 1e3:0.#} mm deep in a tank of {span * 1e3:0} mm"), "first sloshing period", source, kind, published, "s", tolerance,
            () => 2 * Math.PI / SloshMode.Frequency(span, depth, TextbookGravity));

        return
        [
            Period(0.9, 0.093, 1.919, "SPHERIC validation test 10", SourceKind.FromMemory, 3e-3),
            Period(0.9, 0.3556, 1.167, "SPHERIC validation test 10", SourceKind.FromMemory, 3e-3),
            Period(0.59, 0.03, 1 / 0.458, "L. M. Sun and Y. Fujino, tank damper of 590 mm, 0.458 Hz", SourceKind.FromMemory, 3e-3),
            Period(0.5, 0.1, 1.0724, Waves, SourceKind.Derived, 1e-4),
            Period(0.4, 0.15, 0.7872, Waves, SourceKind.Derived, 1e-4),
            Period(1.0, 0.5, 1.1818, Waves, SourceKind.Derived, 1e-4),
        ];
    }

    private static IEnumerable<OutsideCheck> Roads() =>
    [
        One("ISO 3888-1 double lane change", "length", "ISO 3888-1", SourceKind.FromMemory, 125, "m", 1e-12, () => LaneChange.Severe(1.8).LengthMetres),
        One("ISO 3888-1, car 1.8 m wide", "middle lane", "ISO 3888-1", SourceKind.FromMemory, 2.41, "m", 1e-9, () => LaneChange.Severe(1.8).MiddleWidthMetres),
        One("ISO 3888-2 obstacle avoidance", "length", "ISO 3888-2", SourceKind.FromMemory, 61, "m", 1e-12, () => LaneChange.Avoidance(1.8).LengthMetres),
        One("ISO 3888-2, car 1.8 m wide", "first lane", "ISO 3888-2", SourceKind.FromMemory, 2.23, "m", 1e-9, () => LaneChange.Avoidance(1.8).FirstWidthMetres),
        One("ISO 4138 circle of 100 m at 72 km/h", "acceleration", "v²/R with ISO 4138's preferred radius", SourceKind.FromMemory, 4, "m/s²", 1e-9, () => Manoeuvres.SteadyCircle(20, Manoeuvres.SteadyRadiusMetres, toLeft: true, 10, 5, 5, 0.05).Samples.Max(s => s.LeftMetresPerSecondSquared)),
        One("fish tank, 0 to 90 km/h in 10 s", "slope of the surface", "Çengel and Cimbala, Fluid Mechanics, Ex 3-12 p 106", SourceKind.Published, 0.2548, "1", 1e-3, () => RoadSample.On(2.5, 0, 0, 0).AheadMetresPerSecondSquared / TextbookGravity),
    ];

    // Slow oil through a tube between two wide tanks: the head that drives 2·10⁻⁵ m³/s over 10 m of 20 mm is 20.4 kPa.
    private static OutsideCheck Poiseuille() => One("oil of 0.4 Pa s through 10 m of 20 mm", "pressure for 2·10⁻⁵ m³/s", Munson, SourceKind.Published, 20.4, "kPa", 5e-3, () =>
    {
        const double density = 900;
        const double head = 0.5;
        var tanks = Pair(1e3, 1e3, Pipe(0.020, 10, 0, null)) with { Fuel = new CarriedFuel(density, 0.4) };
        var flow = tanks.Run(RoadTrace.Standing(20), (1e3 * (1 + head), 1e3), 20).Moments[^1].FlowToRight;
        return density * RoadSample.Gravity * head * (2e-5 / flow) / 1e3;
    });

    private static IEnumerable<OutsideCheck> Circuits()
    {
        var arm = FloatArm.Between(0.12, 0.18, 0.02, 0.22);
        return
        [
            One("float arm of 180 mm pivoted at 120 mm, fuel at 170 mm", "angle", "θ = asin((h − h_p)/r) evaluated independently", SourceKind.Derived, 16.128, "°", 1e-4, () => double.RadiansToDegrees(arm.AngleAt(0.17))),
            One("75 to 10 Ω sender on a gauge made for 240 to 33 Ω", "travel at which it comes to FULL", "(75 − 33)/(75 − 10) worked out independently", SourceKind.Derived, 0.646, "1", 2e-3, () =>
            {
                var circuit = new GaugeCircuit { Sender = new SenderFamily(75, 10), MadeFor = SenderFamily.Of("240-33")! };
                return Enumerable.Range(0, 10_001).Select(k => k / 1e4).First(t => circuit.NeedleAt(circuit.Sender.OhmsAt(t)) >= 1);
            }),
        ];
    }

    private static OutsideCheck One(
        string subject, string quantity, string source, SourceKind kind, double published, string unit, double tolerance, Func<double> ours) => new()
        {
            Subject = subject,
            Quantity = quantity,
            Source = source,
            Kind = kind,
            Published = published,
            Unit = unit,
            Tolerance = tolerance,
            Ours = ours,
        };
}
