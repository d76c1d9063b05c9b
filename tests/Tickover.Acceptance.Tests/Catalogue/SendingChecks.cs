using Tickover.Physics.Sending;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Two tanks, the pipe between them, slosh, float arm and the standard manoeuvres.</summary>
public static class SendingChecks
{
    private const string Derived = "Unsteady Bernoulli equation, integrated independently (fourth-order Runge-Kutta, g 9.81 m/s²)";
    private const string Trade = "Workshop's table of minutes to level, two tanks of 0.25 m², 1.2 m of pipe, K 2, f 0.03";
    private const double G = 9.81;

    public static CheckGroup Group { get; } = new("Two tanks and their gauge",
        [.. Columns(), .. Damped(), .. Established(), .. Twins(), .. Equal(), .. Minutes(), .. Laminar(), .. Sloshes(), .. Arms(), .. Courses()]);

    private static LinkedTank Tank(double area, double height) =>
        new() { Table = LevelTable.Upright(area, height), WidthMetres = 0.3, LengthMetres = 0.3 };

    private static TwoTanks Pair(double area1, double area2, double height, CrossPipe pipe) => new(Tank(area1, height), Tank(area2, height), pipe) { Gravity = G };

    private static CrossPipe Pipe(double bore, double length, double loss, double? factor) =>
        new() { BoreMetres = bore, LengthMetres = length, LossToRight = loss, LossToLeft = loss, FrictionFactor = factor, EndCorrectionBores = 0 };

    private static OutsideCheck Check(string subject, string quantity, string source, SourceKind kind, (double Value, string Unit, double Tolerance) published, Func<double> ours) => new()
    {
        Subject = subject,
        Quantity = quantity,
        Source = source,
        Kind = kind,
        Published = published.Value,
        Unit = published.Unit,
        Tolerance = published.Tolerance,
        Ours = ours,
    };

    private static double[] Differences(TankMoments m) => [.. Enumerable.Range(0, m.Count).Select(i => m.LeftLevels[i] - m.RightLevels[i])];

    // Time of the first fall through a level, on a straight line between moments.
    private static double Crossing(double[] values, double level, double every)
    {
        var i = Enumerable.Range(1, values.Length - 1).First(k => values[k] <= level);
        return (i - 1 + (values[i - 1] - level) / (values[i - 1] - values[i])) * every;
    }

    private static IEnumerable<OutsideCheck> Columns()
    {
        double Period()
        {
            var area = 3e-4;
            var pair = Pair(area, area, 2, Pipe(Math.Sqrt(4 * area / Math.PI), 0.4, 0, 0));
            var quarter = Crossing(Differences(pair.Run(RoadTrace.Standing(2, 0.001), (area * 1.05, area * 0.95), 0.001)), 0, 0.001);
            return 4 * quarter;
        }

        return [Check("U-tube with water 20 cm high in each leg", "period", "Physics textbook for class XI, worked problem on a U-tube", SourceKind.Published, (0.9, "s", 0.005), Period)];
    }

    private static IEnumerable<OutsideCheck> Damped()
    {
        (string Which, double Published)[] extremes = [("first", -4.8344), ("second", 4.0489)];
        return extremes.Select((e, i) => Check("U-tube of 0.5 m bore, f 0.03, let go from 6 m", e.Which + " extreme after it", "V. L. Streeter and E. B. Wylie, Fluid Mechanics, oscillation of a liquid in a U-tube (inputs from memory), worked out independently", SourceKind.Derived, (e.Published, "m", 0.003), () =>
        {
            var area = Math.PI / 4 * 0.25;
            const double length = 60;
            var pair = Pair(area, area, 40, Pipe(0.5, length, 0, 0.03));
            var swing = Differences(pair.Run(RoadTrace.Standing(24), (area * 26, area * 14), 0.01)).Select(d => 0.5 * d).ToArray();
            var low = Array.IndexOf(swing, swing.Min());
            return i == 0 ? swing[low] : swing[low..].Max();
        }));
    }

    private static IEnumerable<OutsideCheck> Established()
    {
        (double Part, double Published)[] rows = [(0.25, 0.577), (0.5, 1.240), (0.75, 2.197)];
        return rows.Select(r => Check("flow started in 15 m of 0.1 m pipe, f 0.02, head 2 m", FormattableString.Invariant($"time to {r.Part} of the final speed"), "R. L. Daugherty and J. B. Franzini, Fluid Mechanics with Engineering Applications, example 13.3", SourceKind.Published, (r.Published, "s", 0.005), () =>
        {
            var pair = Pair(5e4, 5e4, 4, Pipe(0.1, 15, 1.5, 0.02));
            var final = Math.Sqrt(2 * G * 2 / (1.5 + 0.02 * 150)) * Math.PI / 4 * 0.01;
            var still = pair.Run(RoadTrace.Standing(4, 0.001), (5e4 * 3, 5e4), 0.001).PipeFlows.Select(q => -q).ToArray();
            return Crossing(still, -r.Part * final, 0.001);
        }));
    }

    private static IEnumerable<OutsideCheck> Twins()
    {
        static double[] Run(double loss) => Differences(Pair(0.06, 0.06, 1, Pipe(0.025, 0.8, loss, 0)).Run(RoadTrace.Standing(40), (0.06 * 0.55, 0.06 * 0.45), 0.01));
        const string subject = "two tanks of 0.06 m², 0.1 m apart in level, 25 mm pipe of 0.8 m";
        return
        [
            Check(subject, "period without losses", Derived, SourceKind.Derived, (14.027, "s", 0.001), () => 4 * Crossing(Run(0), 0, 0.01)),
            Check(subject, "time to level with K 2.5", Derived, SourceKind.Derived, (11.519, "s", 0.001), () => Crossing(Run(2.5), 0, 0.01)),
            Check(subject, "how far it goes beyond", Derived, SourceKind.Derived, (-5.24, "mm", 0.002), () => 1000 * Run(2.5).Min()),
            Check(subject, "time to level by the formula without inertia", Derived, SourceKind.Derived, (13.798, "s", 0.001), () => Levelling.Turbulent((0.06, 0.06), (0.1, 0), Math.PI / 4 * 0.025 * 0.025, 2.5)),
        ];
    }

    private static IEnumerable<OutsideCheck> Equal()
    {
        static double Cd(double cd) => 1 / (cd * cd);
        return
        [
            Check("tanks of 4 by 2 m and 2 by 2 m, hole of 0.01 m², Cd 0.62, 0.3 to 0.1 m", "time", "C. Schaschke, Fluid Mechanics: Worked Examples for Engineers, example 6.6", SourceKind.Published, (44.957, "s", 0.001), () => Levelling.Turbulent((8, 4), (0.3, 0.1), 0.01, Cd(0.62))),
            Check("tanks of 2 and 0.8 m², hole of 10 cm, Cd 0.7, 1.5 to 0.5 m", "time", "Textbook problem, answer worked out independently", SourceKind.Derived, (24.29, "s", 0.001), () => Levelling.Turbulent((2, 0.8), (1.5, 0.5), Math.PI / 4 * 0.01, Cd(0.7))),
        ];
    }

    private static IEnumerable<OutsideCheck> Minutes()
    {
        (double Bore, double Published, double Tolerance)[] rows = [(6, 38, 0.03), (8, 19, 0.03), (10, 12, 0.05), (12, 8, 0.06), (16, 4, 0.12), (22, 2, 0.12)];
        return rows.SelectMany(r => new[]
        {
            Check(FormattableString.Invariant($"two tanks of 0.25 m² through {r.Bore} mm, 200 to 5 mm"), "time by formula", Trade, SourceKind.CommonPractice, (r.Published, "min", r.Tolerance), () =>
                Levelling.Turbulent((0.25, 0.25), (0.2, 0.005), Math.PI / 4e6 * r.Bore * r.Bore, 3 + 0.03 * 1200 / r.Bore) / 60),
            Check(FormattableString.Invariant($"two tanks of 0.25 m² through {r.Bore} mm, 200 to 5 mm"), "time stepped, inertia and all", Trade, SourceKind.CommonPractice, (r.Published, "min", r.Tolerance), () =>
                Crossing(Differences(Pair(0.25, 0.25, 1, Pipe(r.Bore / 1000, 1.2, 3, 0.03)).Run(RoadTrace.Standing(3000), (0.25 * 0.5, 0.25 * 0.3), 1)), 0.005, 1) / 60),
        });
    }

    private static IEnumerable<OutsideCheck> Laminar() =>
    [
        Check("4 mm pipe of 2 m under 20 mm of petrol", "steady flow", "Hagen-Poiseuille: Q = π g H D⁴/(128 ν L)", SourceKind.Derived, (Math.PI * G * 0.02 * Math.Pow(0.004, 4) / (128 * 6.8e-7 * 2) * 1e6, "cm³/s", 0.002), () =>
            1e6 * Pair(1e3, 1e3, 1, Pipe(0.004, 2, 0, null)).Run(RoadTrace.Standing(60), (1e3 * 0.12, 1e3 * 0.10), 1).PipeFlows[^1]),
        Check("4 mm pipe of 2 m, two tanks of 0.02 m², 20 mm apart", "time to 1/e", "Hagen-Poiseuille: τ = 128 ν L A₁A₂/(π g D⁴ (A₁ + A₂))", SourceKind.Derived, (128 * 6.8e-7 * 2 * 0.01 / (Math.PI * G * Math.Pow(0.004, 4)), "s", 0.01), () =>
            Crossing(Differences(Pair(0.02, 0.02, 1, Pipe(0.004, 2, 0, null)).Run(RoadTrace.Standing(900), (0.02 * 0.12, 0.02 * 0.10), 1)), 0.02 / Math.E, 1)),
    ];

    private static IEnumerable<OutsideCheck> Sloshes()
    {
        const string spheric = "SPHERIC benchmark 10, lateral slosh of a 900 mm tank";
        (double Length, double Depth, double Published, string Source, double Tolerance)[] rows =
        [
            (0.9, 0.093, 1.919, spheric, 0.002),
            (0.9, 0.3556, 1.167, spheric, 0.002),
            (0.59, 0.030, 1 / 0.458, "L. M. Sun and Y. Fujino, tuned liquid damper of 590 mm, 0.458 Hz", 0.002),
        ];
        return
        [
            .. rows.Select(r => Check(FormattableString.Invariant($"tank of {1000 * r.Length} mm with {1000 * r.Depth} mm in it"), "period of the first slosh", r.Source, SourceKind.FromMemory, (r.Published, "s", r.Tolerance), () => SloshMode.Period(r.Length, r.Depth, G))),
            Check("tank of 500 mm with 100 mm in it", "period of the first slosh", "ω² = g k tanh(kh), evaluated independently", SourceKind.Derived, (1.0724, "s", 0.0001), () => SloshMode.Period(0.5, 0.1, G)),
        ];
    }

    private static IEnumerable<OutsideCheck> Arms()
    {
        var arm = new FloatArm { PivotMetres = 0.12, LengthMetres = 0.18, LowestMetres = 0.02, HighestMetres = 0.22, Family = new SenderFamily(75, 10) };
        var gauge = new GaugeCircuit { Family = new SenderFamily(240, 33), Kind = NeedleKind.MovingIron };
        return
        [
            Check("arm of 180 mm pivoted at 120 mm, level 70 mm", "angle", "Right-angled triangle, evaluated independently", SourceKind.Derived, (-16.128, "°", 1e-4), () => double.RadiansToDegrees(arm.Angle(0.07))),
            Check("sender 75 to 10 Ω on a gauge for 240 to 33 Ω", "shown at empty", "Both scales straight, evaluated independently", SourceKind.Derived, (0.797, "of the scale", 0.001), () => gauge.Shown(gauge.Signal(75))),
            Check("sender 75 to 10 Ω on a gauge for 240 to 33 Ω", "travel at which it reaches full", "Both scales straight, evaluated independently", SourceKind.Derived, (0.646, "of the travel", 0.001), () => arm.Family.Travel(gauge.Family.FullOhms)),
            Check("sender 240 to 33 Ω", "at half", "Table of a boat parts' maker: 240, 188, 136, 84, 33 Ω", SourceKind.Published, (136, "Ω", 0.005), () => new SenderFamily(240, 33).At(0.5)),
        ];
    }

    private static IEnumerable<OutsideCheck> Courses() =>
    [
        Check("lane change of ISO 3888-1", "length of the course", "ISO 3888-1, Passenger cars - Test track for a severe lane-change manoeuvre - Double lane-change", SourceKind.FromMemory, (125, "m", 1e-9), () => ManoeuvreSizes.LaneChange.TotalMetres),
        Check("lane change of ISO 3888-1", "where the line ends beside the second lane", "ISO 3888-1, offset of the lanes", SourceKind.FromMemory, (3.5, "m", 0.001), () => Offset(ManoeuvreSizes.LaneChange, 57)),
        Check("obstacle avoidance of ISO 3888-2", "length of the course", "ISO 3888-2, Passenger cars - Test track for a severe lane-change manoeuvre - Obstacle avoidance", SourceKind.FromMemory, (61, "m", 1e-9), () => ManoeuvreSizes.Obstacle.TotalMetres),
        Check("steady circle of ISO 4138 at 4 m/s² on 100 m", "sideways acceleration", "ISO 4138, constant radius: a = v²/R with v 72 km/h", SourceKind.FromMemory, (72 / 3.6 * (72 / 3.6) / 100, "m/s²", 1e-9), () => DrawnRoad.SteadyCircle(100, 4, 20, 5).Left[2000]),
    ];

    private static double Offset(ManoeuvreSizes sizes, double along)
    {
        const double step = 0.01;
        double heading = 0, offset = 0;
        for (var s = 0.0; s < along; s += step)
        {
            heading += sizes.Curvature(s + 0.5 * step) * step;
            offset += (heading - 0.5 * sizes.Curvature(s + 0.5 * step) * step) * step;
        }

        return offset;
    }
}
