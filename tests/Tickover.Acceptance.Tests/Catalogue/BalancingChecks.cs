using System.Numerics;
using Tickover.Physics.Balancing;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Influence coefficients, least squares, recursive learning, and the proportions of nearly shut plates.</summary>
public static class BalancingChecks
{
    private const string TwoPlane = "S. S. Rao, Mechanical Vibrations, two-plane balancing of a turbine rotor (inputs from memory)";
    private const string ByHand = "Worked out independently from the definition";
    private const string Trade = "Idle geometry as the trade's texts give it, derived from choked flow";

    public static CheckGroup Group { get; } = new("Balancing", [.. TwoPlanes(), .. Three(), .. Learning(), .. Plates(), .. Idle()]);

    private static OutsideCheck Check(string subject, string quantity, double published, Func<double> ours, string source, SourceKind kind = SourceKind.Derived, double tolerance = 2e-5, string unit = "1", string note = "") => new()
    {
        Subject = subject,
        Quantity = quantity,
        Published = published,
        Ours = ours,
        Source = source,
        Kind = kind,
        Tolerance = tolerance,
        Unit = unit,
        Note = note,
    };

    private static IEnumerable<OutsideCheck> TwoPlanes()
    {
        const string subject = "two planes, two trial weights";
        return
        [
            Check(subject, "influence of the left weight on the left bearing", 0.807112, () => Influence()[0, 0].Magnitude, TwoPlane),
            Check(subject, "influence of the left weight on the right bearing", 0.307912, () => Influence()[1, 0].Magnitude, TwoPlane),
            Check(subject, "influence of the right weight on the left bearing", 0.331313, () => Influence()[0, 1].Magnitude, TwoPlane),
            Check(subject, "influence of the right weight on the right bearing", 0.623498, () => Influence()[1, 1].Magnitude, TwoPlane),
            Check(subject, "left weight", 10.056139, () => Weights()[0].Magnitude, TwoPlane, SourceKind.FromMemory),
            Check(subject, "right weight", 5.877362, () => Weights()[1].Magnitude, TwoPlane, SourceKind.FromMemory),
            Check(subject, "angle of the left weight that leaves nothing", 325.5548, () => Degrees(Weights()[0]), TwoPlane, note: "The book prints the opposite sign; ours leaves no residual."),
            Check(subject, "angle of the right weight that leaves nothing", 68.2559, () => Degrees(Weights()[1]), TwoPlane),
        ];
    }

    private static Complex At(double size, double degrees) => Complex.FromPolarCoordinates(size, double.DegreesToRadians(degrees));

    private static double Degrees(Complex value) => (double.RadiansToDegrees(value.Phase) + 360) % 360;

    private static readonly Complex[] Before = [At(8.5, 60), At(6.5, 205)];

    private static Complex[,] Influence()
    {
        Complex[] left = [At(6, 125), At(4.5, 230)], right = [At(6, 35), At(10.5, 160)];
        var (l, r) = (At(10, 270), At(12, 180));
        return new[,] { { (left[0] - Before[0]) / l, (right[0] - Before[0]) / r }, { (left[1] - Before[1]) / l, (right[1] - Before[1]) / r } };
    }

    // a complex coefficient is a two by two block of real ones
    private static Complex[] Weights()
    {
        var a = Influence();
        var g = new double[4, 4];
        for (var i = 0; i < 2; i++)
        {
            for (var j = 0; j < 2; j++)
            {
                (g[2 * i, 2 * j], g[2 * i, (2 * j) + 1]) = (a[i, j].Real, -a[i, j].Imaginary);
                (g[(2 * i) + 1, 2 * j], g[(2 * i) + 1, (2 * j) + 1]) = (a[i, j].Imaginary, a[i, j].Real);
            }
        }

        var x = InfluenceTurns.Solve(g, [Before[0].Real, Before[0].Imaginary, Before[1].Real, Before[1].Imaginary]).Turns;
        return [new(x[0], x[1]), new(x[2], x[3])];
    }

    private static IEnumerable<OutsideCheck> Three()
    {
        double[] published = [-1.165217, 0.826087, -0.465217];
        static double Turn(int n) => InfluenceTurns.Solve(new[,] { { 1, 0.2, 0 }, { 0.2, 1, 0.2 }, { 0, 0.2, 1 } }, [1, -0.5, 0.3]).Turns[n];
        return published.Select((p, n) => Check("three barrels, each screw a fifth on its neighbours", FormattableString.Invariant($"turns of screw {n + 1}"), p, () => Turn(n), ByHand));
    }

    private static IEnumerable<OutsideCheck> Learning()
    {
        static InfluenceRow Recursive(int readings)
        {
            var row = new InfluenceRow(0, 0, [0], [100]);
            row.Turn(0, 1);
            row.Read(1, 1);
            if (readings > 1)
            {
                row.Read(1.2, 1);
            }

            return row;
        }

        static double Broyden(double gain, double other, double change, int which)
        {
            var row = new InfluenceRow(0, 0, [gain, other], [1, 1]);
            row.Turn(0, 1);
            row.Turn(1, 2);
            row.Read(change, 0);
            return row.Gain(which);
        }

        const string recursive = "recursive least squares, P 100, readings 1 and 1.2 after a turn";
        const string broyden = "rank-one update of the unit matrix, step (1, 2), change (3, 5)";
        return
        [
            Check(recursive, "gain after one", 0.990099, () => Recursive(1).Gain(0), ByHand),
            Check(recursive, "variance after one", 0.990099, () => Recursive(1).GainVariance(0), ByHand),
            Check(recursive, "gain after two", 1.094527, () => Recursive(2).Gain(0), ByHand),
            Check(recursive, "variance after two", 0.497512, () => Recursive(2).GainVariance(0), ByHand),
            Check(broyden, "first row, first column", 1.4, () => Broyden(1, 0, 3, 0), "C. G. Broyden, Math. Comp. 19 (1965), formula; " + ByHand),
            Check(broyden, "first row, second column", 0.8, () => Broyden(1, 0, 3, 1), "C. G. Broyden, Math. Comp. 19 (1965), formula; " + ByHand),
            Check(broyden, "second row, first column", 0.6, () => Broyden(0, 1, 5, 0), "C. G. Broyden, Math. Comp. 19 (1965), formula; " + ByHand),
            Check(broyden, "second row, second column", 2.2, () => Broyden(0, 1, 5, 1), "C. G. Broyden, Math. Comp. 19 (1965), formula; " + ByHand),
        ];
    }

    private static IEnumerable<OutsideCheck> Plates()
    {
        static NearlyShutPlate Plate() => new() { BoreMetres = 0.040, ClosedAngleRadians = double.DegreesToRadians(10) };
        const string subject = "40 mm plate closing at 10°";
        return
        [
            Check("air at 1 bar and 25 °C", "choked flow of a square metre", 237, () => Plate().ChokedFlux / Plate().Discharge, Trade, tolerance: 0.02, unit: "kg/(s·m²)"),
            Check(subject, "angle worth 10 % of 4 kg/h", 0.16, () => 0.4 / 3600 / Plate().FlowPerDegree(4.0 / 3600), Trade, tolerance: 0.15, unit: "°", note: "The trade takes the slope at the seat; ours takes it where 4 kg/h pass."),
            Check(subject, "part of 20 kg/h that 0.16° are worth", 0.02, () => 0.16 * Plate().FlowPerDegree(4.0 / 3600) * 3600 / 20, Trade, tolerance: 0.15),
            Check(subject, "area a degree adds at the seat", 3.9, () => Plate().FlowPerDegree(1e-6) / Plate().ChokedFlux * 1e6, Trade, tolerance: 0.02, unit: "mm²/°"),
        ];
    }

    private static IEnumerable<OutsideCheck> Idle()
    {
        static double Air(double cubicCentimetres, double rpm, double filling) => 3600 * IdleAir.KilogramsPerSecond(cubicCentimetres / 1e6, rpm, filling);
        const string published = "Published idle flow of a V8 of that size, about 3.5 kg/h at 7° before top dead centre";
        return
        [
            Check("330 cm³ a barrel at 900 rpm", "least air", 2.7, () => Air(330, 900, IdleAir.LeastFilling), Trade, tolerance: 0.03, unit: "kg/h"),
            Check("330 cm³ a barrel at 900 rpm", "most air", 3.7, () => Air(330, 900, IdleAir.MostFilling), Trade, tolerance: 0.03, unit: "kg/h"),
            Check("370 cm³ a barrel at 1,000 rpm", "most air", 4.7, () => Air(370, 1000, IdleAir.MostFilling), Trade, tolerance: 0.03, unit: "kg/h"),
            Check("370 cm³ a barrel at 1,000 rpm", "least air", 3.5, () => Air(370, 1000, IdleAir.LeastFilling), published, SourceKind.CommonPractice, tolerance: 0.06, unit: "kg/h"),
        ];
    }
}
