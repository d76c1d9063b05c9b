using Tickover.Reports.Charts;

namespace Tickover.Reports.Mixture;

/// <summary>λ of the trial less λ of what is fitted, where both give an answer.</summary>
internal sealed class DifferenceField
{
    /// <summary>Changes smaller than this are none: the last digit shown would not move.</summary>
    internal const double NoChange = 0.005;

    // The colours reach their ends at the largest change within these
    private const double LeastReach = 0.05;
    private const double MostReach = 0.30;

    internal DifferenceField(DifferenceView view, MapFrame frame)
    {
        if (!view.Fitted.Grid.SpeedsRpm.SequenceEqual(view.Trial.Grid.SpeedsRpm)
            || !view.Fitted.Grid.ThrottleDegrees.SequenceEqual(view.Trial.Grid.ThrottleDegrees))
        {
            throw new ArgumentException("Fitted and trial must be computed over the same speeds and openings.", nameof(view));
        }

        Fitted = new MapField(view.Fitted, view.Fitted.ForBarrel(view.BarrelNumber), frame);
        Trial = new MapField(view.Trial, view.Trial.ForBarrel(view.BarrelNumber), frame);
        Change = Fitted.Lambda.Map((i, j) => Trial.Lambda.Values[i, j] - Fitted.Lambda.Values[i, j]);
        Answers = Fitted.Answers.Map((i, j) => Math.Min(Fitted.Answers.Values[i, j], Trial.Answers.Values[i, j]));
        Area = new MapArea(
            Fitted.Runs.Map((i, j) => Math.Min(Fitted.Runs.Values[i, j], Trial.Runs.Values[i, j])),
            Fitted.Unsettled.Map((i, j) => Math.Max(Fitted.Unsettled.Values[i, j], Trial.Unsettled.Values[i, j])));
        var (least, most) = (0.0, 0.0);
        for (var i = 0; i < Change.Columns; i++)
        {
            for (var j = 0; j < Change.Rows; j++)
            {
                var change = HasAnswer(i, j) ? Change.Values[i, j] : 0;
                (least, most) = (Math.Min(least, change), Math.Max(most, change));
            }
        }

        Span = (least, most);
        Reach = Math.Clamp(Math.Max(-least, most), LeastReach, MostReach);
    }

    /// <summary>The largest changes either way, zero among them.</summary>
    internal (double Least, double Most) Span { get; }

    internal MapField Fitted { get; }

    internal MapField Trial { get; }

    internal Field Change { get; }

    internal Field Answers { get; }

    /// <summary>Outlines of where both run, and of what did not settle in either.</summary>
    internal MapArea Area { get; }

    /// <summary>The change at which the colours reach their ends.</summary>
    internal double Reach { get; }

    internal bool HasAnswer(int i, int j) => Answers.Values[i, j] >= 0;

    internal bool HasAnswer(ChartPoint place) => Answers.At(place) >= 0;
}
