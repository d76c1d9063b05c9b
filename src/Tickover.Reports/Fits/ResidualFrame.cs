using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;

namespace Tickover.Reports.Fits;

/// <summary>Where the two plots lie, over the opening and over the speed, and their axes.</summary>
internal sealed class ResidualFrame
{
    private const double Apart = 76;
    private const double LeastReach = 0.04;               // of λ: a good fit is not blown up to look bad
    private const double Edge = 0.04;

    internal ResidualFrame(IReadOnlyList<Residual> residuals, PictureSize size)
    {
        var full = size == PictureSize.Full;
        var (left, width, height) = full ? (56.0, 700.0, 200.0) : (50.0, 302.0, 176.0);
        Over = new Box(left, 52, width, height);
        Along = new Box(left, Over.Bottom + Apart, width, height);
        (Width, Height) = (full ? 772 : 366, Along.Bottom + (full ? 92 : 136));
        var reach = Math.Max(LeastReach, 1.1 * residuals.Select(r => Math.Max(Math.Abs(r.Off), r.Half)).DefaultIfEmpty(0).Max());
        OffOver = new Scale(ScaleKind.Linear, (-reach, reach), (Over.Bottom, Over.Top));
        OffAlong = new Scale(ScaleKind.Linear, (-reach, reach), (Along.Bottom, Along.Top));
        Opening = new Scale(ScaleKind.SquareRoot, (0, 90), (Over.Left, Over.Right));
        var (low, high) = residuals.Count == 0 ? (500, 6000) : (residuals.Min(r => r.SpeedRpm), residuals.Max(r => r.SpeedRpm));
        var edge = Math.Max(Edge * (high - low), 100);
        Speed = new Scale(ScaleKind.Linear, (low - edge, high + edge), (Along.Left, Along.Right));
    }

    internal Box Over { get; }

    internal Box Along { get; }

    internal double Width { get; }

    internal double Height { get; }

    internal Scale OffOver { get; }

    internal Scale OffAlong { get; }

    internal Scale Opening { get; }

    internal Scale Speed { get; }
}
