namespace Tickover.Physics.Leaks;

/// <summary>A straight line through readings by least squares.</summary>
/// <param name="Slope">Per second.</param>
/// <param name="SquaresOfTime">Σ(t − t̄)², s².</param>
/// <param name="SlopeDeviation">Standard deviation of the slope by the readings' own scatter; zero for two.</param>
internal readonly record struct Line(double Slope, double SquaresOfTime, double SlopeDeviation)
{
    internal static Line Through(double[] t, double[] y)
    {
        var (meanT, meanY) = (t.Average(), y.Average());
        var squares = t.Sum(v => (v - meanT) * (v - meanT));
        var slope = t.Zip(y, (a, b) => (a - meanT) * (b - meanY)).Sum() / squares;
        var left = t.Zip(y, (a, b) => b - meanY - slope * (a - meanT)).Sum(e => e * e);
        return new Line(slope, squares, t.Length > 2 ? Math.Sqrt(left / (t.Length - 2) / squares) : 0);
    }
}
