namespace Tickover.Acceptance.Tests.Regression;

/// <summary>The published models of the sets, parameters b and predictors x as there.</summary>
public static class RegressionModels
{
    /// <summary>What the model says less what was observed.</summary>
    /// <param name="set">The set.</param>
    /// <param name="b">Parameters.</param>
    /// <returns>A residual for each point.</returns>
    public static double[] Residuals(RegressionSet set, double[] b)
    {
        var model = Of(set.Name);
        var residuals = new double[set.Y.Length];
        for (var i = 0; i < residuals.Length; i++)
        {
            double[] x = [.. set.X.Select(column => column[i])];
            residuals[i] = model(b, x) - (set.Name is "Nelson" ? Math.Log(set.Y[i]) : set.Y[i]);
        }

        return residuals;
    }

    private static Func<double[], double[], double> Of(string name) => name switch
    {
        "Misra1a" or "BoxBOD" => (b, x) => b[0] * (1 - Math.Exp(-b[1] * x[0])),
        "Misra1b" => (b, x) => b[0] * (1 - Math.Pow(1 + b[1] * x[0] / 2, -2)),
        "Misra1c" => (b, x) => b[0] * (1 - Math.Pow(1 + 2 * b[1] * x[0], -0.5)),
        "Misra1d" => (b, x) => b[0] * b[1] * x[0] / (1 + b[1] * x[0]),
        "Chwirut2" => (b, x) => Math.Exp(-b[0] * x[0]) / (b[1] + b[2] * x[0]),
        "DanWood" => (b, x) => b[0] * Math.Pow(x[0], b[1]),
        "Kirby2" => (b, x) => (b[0] + x[0] * (b[1] + x[0] * b[2])) / (1 + x[0] * (b[3] + x[0] * b[4])),
        "Hahn1" or "Thurber" => Cubic,
        "Nelson" => (b, x) => b[0] - b[1] * x[0] * Math.Exp(-b[2] * x[1]),
        "MGH17" => (b, x) => b[0] + b[1] * Math.Exp(-x[0] * b[3]) + b[2] * Math.Exp(-x[0] * b[4]),
        "Roszman1" => (b, x) => b[0] - b[1] * x[0] - Math.Atan(b[2] / (x[0] - b[3])) / Math.PI,
        "ENSO" => Cycles,
        "MGH09" => (b, x) => b[0] * (x[0] * x[0] + x[0] * b[1]) / (x[0] * x[0] + x[0] * b[2] + b[3]),
        "Rat42" => (b, x) => b[0] / (1 + Math.Exp(b[1] - b[2] * x[0])),
        "Rat43" => (b, x) => b[0] / Math.Pow(1 + Math.Exp(b[1] - b[2] * x[0]), 1 / b[3]),
        "MGH10" => (b, x) => b[0] * Math.Exp(b[1] / (x[0] + b[2])),
        "Eckerle4" => (b, x) => b[0] / b[1] * Math.Exp(-0.5 * (x[0] - b[2]) * (x[0] - b[2]) / (b[1] * b[1])),
        "Bennett5" => (b, x) => b[0] * Math.Pow(b[1] + x[0], -1 / b[2]),
        _ when name.StartsWith("Lanczos", StringComparison.Ordinal) => Decays,
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "not one of the sets"),
    };

    private static double Cubic(double[] b, double[] x) =>
        (b[0] + x[0] * (b[1] + x[0] * (b[2] + x[0] * b[3]))) / (1 + x[0] * (b[4] + x[0] * (b[5] + x[0] * b[6])));

    private static double Decays(double[] b, double[] x) =>
        b[0] * Math.Exp(-b[1] * x[0]) + b[2] * Math.Exp(-b[3] * x[0]) + b[4] * Math.Exp(-b[5] * x[0]);

    private static double Cycles(double[] b, double[] x)
    {
        var turn = 2 * Math.PI * x[0];
        return b[0] + b[1] * Math.Cos(turn / 12) + b[2] * Math.Sin(turn / 12)
            + b[4] * Math.Cos(turn / b[3]) + b[5] * Math.Sin(turn / b[3])
            + b[7] * Math.Cos(turn / b[6]) + b[8] * Math.Sin(turn / b[6]);
    }
}
