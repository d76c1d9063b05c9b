using Tickover.Reports.Charts;

namespace Tickover.Reports.Balance;

/// <summary>Puts an engine down lying, front to the left, or upright, front at the top; the drawing is thought out once, along and across the engine.</summary>
/// <param name="Upright">Whether the front is at the top.</param>
/// <param name="Above">Room kept free above an engine that lies.</param>
internal readonly record struct Frame(bool Upright, double Above = 0)
{
    internal ChartPoint At(double along, double across) => Upright ? new(across, along) : new(along, across + Above);

    internal Box Box((double From, double To) along, (double From, double To) across) => Upright
        ? new Box(across.From, along.From, across.To - across.From, along.To - along.From)
        : new Box(along.From, across.From + Above, along.To - along.From, across.To - across.From);
}
