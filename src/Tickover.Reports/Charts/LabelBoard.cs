namespace Tickover.Reports.Charts;

/// <summary>Keeps labels off each other and inside the picture.</summary>
internal sealed class LabelBoard(Box bounds)
{
    private readonly List<Box> _taken = [];

    internal Box Bounds => bounds;

    /// <summary>Whether a box lies inside the picture and clear of everything taken.</summary>
    internal bool IsFree(Box box) => bounds.Contains(box) && !_taken.Exists(t => t.Overlaps(box));

    /// <summary>Whether a straight line crosses nothing taken.</summary>
    internal bool IsFree(ChartPoint from, ChartPoint to) =>
        !_taken.Exists(t => Clipping.ToBox(new Polyline([from, to], Closed: false), t).Count > 0);

    /// <summary>Takes a box, free or not.</summary>
    internal void Take(Box box) => _taken.Add(box);

    /// <summary>Takes a box where it is free.</summary>
    internal bool TryTake(Box box)
    {
        var free = IsFree(box);
        if (free)
        {
            Take(box);
        }

        return free;
    }
}
