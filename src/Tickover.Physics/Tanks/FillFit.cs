using Tickover.Physics.Estimation;
using Tickover.Physics.Linkages;
using MathNet.Numerics.LinearAlgebra;

namespace Tickover.Physics.Tanks;

/// <summary>A measured fill held against the drawn shape: what has to be off for both to be right. docs/physics/tanks.md (18) to (20).</summary>
public sealed record FillFit
{
    private const double Robust = 2;
    private const double Outstanding = 3;
    private const double Doubtful = 2;

    /// <summary>Whether the two agree.</summary>
    public required FillVerdict Verdict { get; init; }

    /// <summary>What was found for each thing that may be off.</summary>
    public required IReadOnlyList<FillUnknown> Unknowns { get; init; }

    /// <summary>Step by step.</summary>
    public required IReadOnlyList<FillLine> Lines { get; init; }

    /// <summary>Root mean square of dip read less dip fitted, in standard deviations of a reading.</summary>
    public required double Misfit { get; init; }

    /// <summary>The shape's table set right, for the tank standing level.</summary>
    public required StrappingTable? Table { get; init; }

    /// <summary>Holds a fill against a shape.</summary>
    /// <param name="shape">The tank as drawn.</param>
    /// <param name="foot">Where the stick stands, m.</param>
    /// <param name="steps">The fill, two steps or more.</param>
    /// <param name="doubts">What is usually off, and by how much; null for this project's assumptions.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentException">Fewer than two steps.</exception>
    public static FillFit Of(TankShape shape, SpaceVector foot, IReadOnlyList<FillStep> steps, FillDoubts? doubts = null)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(steps);
        if (steps.Count < 2)
        {
            throw new ArgumentException("A fill has two steps or more.", nameof(steps));
        }

        var usual = doubts ?? new FillDoubts();
        double[] before = [usual.ScalePart, usual.LeftCubicMetres, usual.ZeroMetres, usual.TiltRadians, usual.TiltRadians];
        var found = LeastSquares.Solve(p => Residuals(shape, foot, steps, p, before, usual.DipMetres), new double[before.Length], new LeastSquaresSettings
        {
            Scale = [.. before.Select(_ => 1.0)],
            DifferenceStep = 1e-3,
            HuberLimit = Robust,
            RobustRows = steps.Count,
        });
        return Build(shape, foot, steps, found, before, usual.DipMetres);
    }

    // Parameters in their usual sizes: each prior row is then the parameter itself.
    private static double[] Residuals(TankShape shape, SpaceVector foot, IReadOnlyList<FillStep> steps, IReadOnlyList<double> p, double[] before, double dipDeviation)
    {
        var dip = Dips(shape, foot, [.. p.Select((v, i) => v * before[i])]);
        return [.. steps.Select(s => (dip(s.PouredCubicMetres) - s.DipMetres) / dipDeviation), .. p]; // tanks (19)
    }

    // The dip a stick shows for fuel poured, with scale, fuel left, zero and tilts as given.
    private static Func<double, double> Dips(TankShape shape, SpaceVector foot, double[] off)
    {
        var tilt = Tilt.Standing(off[3], off[4]);
        var tank = shape.At(tilt);
        return poured => Math.Max(0, tilt.DepthOver(tank.Filled((poured + off[1]) / Math.Max(0.1, 1 + off[0])), foot)) + off[2]; // tanks (18)
    }

    private static FillFit Build(TankShape shape, SpaceVector foot, IReadOnlyList<FillStep> steps, LeastSquaresResult found, double[] before, double dipDeviation)
    {
        var off = found.Parameters.Select((v, i) => v * before[i]).ToArray();
        var covariance = Covariance(found, steps.Count);
        var unknowns = off.Select((v, i) => new FillUnknown((FillUnknownKind)i, v, Math.Sqrt(covariance[i, i]) * before[i], before[i])).ToArray();
        var (drawn, fitted) = (Dips(shape, foot, new double[before.Length]), Dips(shape, foot, off));
        var tilt = Tilt.Standing(off[3], off[4]);
        var tank = shape.At(tilt);
        var lines = steps.Select((s, i) =>
        {
            var level = tilt.LevelAt(s.DipMetres - off[2], foot);
            var row = Vector<double>.Build.Dense(before.Length, k => found.Jacobian[i, k]);
            var dipBand = dipDeviation * Math.Sqrt(row * covariance * row); // tanks (20)
            return new FillLine
            {
                Read = s,
                DrawnDipMetres = drawn(s.PouredCubicMetres),
                FittedDipMetres = fitted(s.PouredCubicMetres),
                FittedCubicMetres = tank.VolumeBelow(level) * (1 + off[0]) - off[1],
                BandCubicMetres = (1 + off[0]) * tank.Below(level).SurfaceSquareMetres * tilt.Up.Z * dipBand,
                StandsOut = Math.Abs(found.Residuals[i]) > Outstanding,
            };
        }).ToArray();
        var misfit = Math.Sqrt(found.Residuals.Take(steps.Count).Average(r => r * r));
        return new FillFit
        {
            Verdict = misfit > Doubtful ? FillVerdict.Differ : Array.Exists(unknowns, u => u.Unusual) ? FillVerdict.AgreeSetRight : FillVerdict.Agree,
            Unknowns = unknowns,
            Lines = lines,
            Misfit = misfit,
            Table = SetRight(shape, foot, 1 + off[0]),
        };
    }

    private static Matrix<double> Covariance(LeastSquaresResult found, int readings)
    {
        var jacobian = Matrix<double>.Build.DenseOfArray(found.Jacobian);
        for (var i = 0; i < readings; i++)
        {
            jacobian.SetRow(i, Math.Sqrt(found.Weights[i]) * jacobian.Row(i));
        }

        return jacobian.TransposeThisAndMultiply(jacobian).Inverse(); // the prior rows keep it regular
    }

    private static StrappingTable? SetRight(TankShape shape, SpaceVector foot, double scale) => StrappingTable.Of(shape, foot) is { } table
        ? StrappingTable.FromFill([.. table.Steps.Select(s => s with { VolumeCubicMetres = s.VolumeCubicMetres * scale })]).Table
        : null;
}
