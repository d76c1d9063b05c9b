using Tickover.Reports.Charts;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>One barrel's map brought onto a fine grid of places: λ, where it holds, and the borders drawn over it.</summary>
internal sealed class MapField
{
    // Some 5 px between places on a tablet: contours look smooth, tracing stays under a few milliseconds
    private const int FineColumns = 142;
    private const int FineRows = 96;

    // Beyond these no colour differs and no engine runs; the cap keeps the interpolation beside the border quiet
    private const double RichestKept = 0.4;
    private const double LeanestKept = 1.8;
    private readonly List<(NoAnswer Reason, Field Field)> _reasons = [];

    private readonly Lazy<FeedingField> _feeding;

    internal MapField(MixtureMap map, BarrelMap barrel, MapFrame frame)
        : this(map, barrel, frame, (FineColumns, FineRows))
    {
    }

    /// <summary>The field on a grid of so many places across and down.</summary>
    internal MapField(MixtureMap map, BarrelMap barrel, MapFrame frame, (int Columns, int Rows) places)
    {
        var coarse = new CoarseMap(map.Grid, barrel, frame);
        var fine = new Field(
            Refinement.Even(frame.Plot.Left, frame.Plot.Right, places.Columns),
            Refinement.Even(frame.Plot.Top, frame.Plot.Bottom, places.Rows),
            new double[places.Columns, places.Rows]);
        // What did not settle is no figure: its neighbours carry the field across
        Lambda = Refinement.Refine(
            Refinement.WithoutGaps(coarse.Figure(p => p.Validity.HasFlag(PointValidity.NotSettled) ? double.NaN : KeptLambda(p))), fine.Xs, fine.Ys);
        var targets = fine.Ys.Select(y => MixtureTargets.At(Math.Max(0, frame.Opening.ToValue(y)))).ToArray();
        TooLean = Lambda.Map((i, j) => Lambda.Values[i, j] - targets[j].Leanest);
        TooRich = Lambda.Map((i, j) => targets[j].Richest - Lambda.Values[i, j]);
        foreach (var reason in NoAnswer.All.Where(r => coarse.Flags.HasFlag(r.Flag)))
        {
            _reasons.Add((reason, SmoothFlag.Refine(coarse.Flag(reason.Flag), coarse.Indicator(reason.Flag), fine)));
        }

        Answers = fine.Map((i, j) => -Worst(i, j, _ => true));
        Runs = fine.Map((i, j) => -Worst(i, j, r => r.Flag != PointValidity.NotSettled));
        Unsettled = fine.Map((i, j) => Worst(i, j, r => r.Flag == PointValidity.NotSettled));
        Area = new MapArea(Runs, Unsettled);
        _feeding = new Lazy<FeedingField>(() => new FeedingField(coarse, fine));
    }

    /// <summary>λ of a point held to what any engine burns; NaN where no fuel flows.</summary>
    internal static double KeptLambda(BarrelPoint point) =>
        point.Lambda > 0 ? Math.Clamp(point.Lambda, RichestKept, LeanestKept) : double.NaN;

    /// <summary>λ everywhere, also where it does not hold.</summary>
    internal Field Lambda { get; }

    /// <summary>Zero or above where there is an answer.</summary>
    internal Field Answers { get; }

    /// <summary>Zero or above where the engine runs. What did not settle is part of it: a gap in the answers is no border of the engine.</summary>
    internal Field Runs { get; }

    /// <summary>Above zero where the computation did not settle.</summary>
    internal Field Unsettled { get; }

    /// <summary>Outlines of where it runs and of what did not settle.</summary>
    internal MapArea Area { get; }

    /// <summary>λ over the leanest target: zero or above where too lean.</summary>
    internal Field TooLean { get; }

    /// <summary>The richest target over λ: zero or above where too rich.</summary>
    internal Field TooRich { get; }

    /// <summary>Which circuit feeds.</summary>
    internal FeedingField Feeding => _feeding.Value;

    /// <summary>Reasons for no answer that occur.</summary>
    internal IEnumerable<NoAnswer> Reasons => _reasons.Select(r => r.Reason);

    internal bool HasAnswer(int i, int j) => Answers.Values[i, j] >= 0;

    internal bool HasAnswer(ChartPoint place) => Answers.At(place) >= 0;

    /// <summary>The reason at a fine place; null where there is an answer.</summary>
    internal NoAnswer? Why(int i, int j) => _reasons.Find(r => r.Field.Values[i, j] > 0).Reason;

    private double Worst(int i, int j, Func<NoAnswer, bool> counts)
    {
        var worst = -1.0;
        foreach (var (reason, field) in _reasons)
        {
            worst = counts(reason) ? Math.Max(worst, field.Values[i, j]) : worst;
        }

        return worst;
    }

    /// <summary>The reason at any place; null where there is an answer.</summary>
    internal NoAnswer? Why(ChartPoint place) => _reasons.Find(r => r.Field.At(place) > 0).Reason;
}
