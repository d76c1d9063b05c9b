using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Reports.Balance;

/// <summary>Places an engine of two banks: a head outside, the carburettors of each bank over the valley, each ring in its barrel.</summary>
/// <remarks>Left is left: upright the left bank stands left; lying, front to the left as seen from the left wing, it stands at the bottom.</remarks>
internal sealed class BankedPlacing
{
    private const double LargestPitch = 150;
    private const double LargestReach = 50;
    private const double LabelDepth = 26;
    private const double NameRoom = 22;
    private const double Between = 0.1;
    private const double Edge = 6;
    private const double ScrewOffRing = 5;
    private readonly EnginePlan _plan;
    private readonly Frame _frame;
    private readonly IReadOnlyList<int> _rows;
    private readonly BankedDepths _depths;
    private readonly double _pitch;
    private readonly double _first;
    private readonly double _cell;

    private BankedPlacing(EnginePlan plan, PictureSize size)
    {
        _plan = plan;
        _frame = new Frame(size == PictureSize.Phone);
        _depths = _frame.Upright ? BankedDepths.Upright : BankedDepths.Lying;
        var left = IsRight(plan, 1) ? 2 : 1;
        _rows = _frame.Upright ? [left, 3 - left] : [3 - left, left];
        Width = _frame.Upright ? EngineGeometry.PhoneWidth : EngineGeometry.FullWidth;
        var most = Enumerable.Range(1, 2).Max(b => Row(b).Count);
        var carburettors = Enumerable.Range(1, 2).Max(b => Row(b).Select(r => r.Carburettor).Distinct().Count());
        const double margin = 58;
        _pitch = _frame.Upright ? 2 * _depths.Reach + LabelDepth + 8 : Math.Min(LargestPitch, (Width - 2 * margin) / (most + Between * (carburettors - 1)));
        Reach = Math.Min(_frame.Upright ? _depths.Reach : LargestReach, _pitch / 2 - 4);
        Length = _pitch * (most + (carburettors - 1) * Between) + (_frame.Upright ? carburettors * NameRoom : 0);
        _first = _frame.Upright ? 34 : (Width - Length) / 2;
        _cell = _frame.Upright ? (Width - 2 * _depths.Outside - _depths.Valley) / 2 : 2 * Reach + LabelDepth + 4;
    }

    private double Width { get; }

    private double Reach { get; }

    private double Length { get; }

    private double Depth => 2 * (_depths.Outside + _cell) + _depths.Valley;

    internal static EngineGeometry Of(EnginePlan plan, PictureSize size) => new BankedPlacing(plan, size).Place();

    private EngineGeometry Place() => new()
    {
        Width = Width,
        Height = _frame.Upright ? _first + Length + 52 : Depth + 2,
        RingReach = Reach,
        Rings = _plan.Barrels.ToDictionary(b => b.Number, Centre),
        LabelsInOneLine = true,
        Heads = [.. _rows.Select((_, row) => _frame.Box((_first - 10, _first + Length + 10), Outer(row, 1, _depths.HeadDepth)))],
        Bodies = [.. _plan.Carburettors.Select(Body)],
        Castings = [.. _plan.Barrels.Select(Runner)],
        Spindles = [.. _rows.Select((_, row) => (_frame.At(_first - 4, SpindleAcross(row)), _frame.At(_first + Length + 22, SpindleAcross(row))))],
        Cylinders = [.. _plan.Barrels.SelectMany(b => b.Cylinders.Select((c, k) => (c, CylinderAt(b, k))))],
        CylinderRadius = _depths.CylinderRadius,
        Adjusters = [.. _plan.Adjusters.Select(Adjuster).OfType<AdjusterPlace>()],
        Words = [.. _plan.Carburettors.SelectMany(Name), new EngineWord("front", _frame.Upright ? new ChartPoint(Width / 2, 14) : new ChartPoint(24, Depth / 2 - 12), 14, Bold: false)],
        Air = [],
        Front = _frame.Upright ? (new ChartPoint(Width / 2 + 40, 20), new ChartPoint(Width / 2 + 40, 4)) : (new ChartPoint(38, Depth / 2 + 4), new ChartPoint(10, Depth / 2 + 4)),
    };

    private static bool IsRight(EnginePlan plan, int bank) => plan.Carburettors.Any(c => c.Bank == bank && c.Name.StartsWith("right", StringComparison.OrdinalIgnoreCase));

    private List<PlanBarrel> Row(int bank) => [.. _plan.Barrels.Where(b => b.Bank == bank)];

    private int RowOf(int bank) => _rows[0] == bank ? 0 : 1;

    /// <summary>A stretch of the depth counted inwards from the outside of a row.</summary>
    private (double From, double To) Outer(int row, double from, double to) => row == 0 ? (from, to) : (Depth - to, Depth - from);

    private double SpindleAcross(int row) => row == 0 ? _depths.Outside - _depths.SpindleIn : Depth - _depths.Outside + _depths.SpindleIn;

    private double Along(PlanBarrel barrel)
    {
        var row = Row(barrel.Bank);
        var place = row.FindIndex(b => b.Number == barrel.Number);
        var carburettor = row.Take(place + 1).Select(b => b.Carburettor).Distinct().Count() - 1;
        return _first + _pitch * (place + 0.5 + Between * carburettor) + (_frame.Upright ? NameRoom * (carburettor + 1) : 0);
    }

    private ChartPoint Centre(PlanBarrel barrel)
    {
        var (from, to) = Outer(RowOf(barrel.Bank), _depths.Outside, _depths.Outside + _cell);
        return _frame.Upright
            ? _frame.At(Along(barrel) - LabelDepth / 2 + 4, (from + to) / 2)
            : _frame.At(Along(barrel), from + Reach + 4);
    }

    private Box Body(PlanCarburettor carburettor)
    {
        var barrels = carburettor.Barrels.Select(n => _plan.Barrels[n - 1]).ToList();
        var rows = barrels.Select(b => RowOf(b.Bank)).Distinct().Order().ToList();
        var front = _frame.Upright ? NameRoom : 0;
        return _frame.Box(
            (barrels.Min(Along) - _pitch / 2 - front + 2, barrels.Max(Along) + _pitch / 2 - 2),
            (Outer(rows[0], _depths.Outside - _depths.SpindleIn - 8, _depths.Outside + _cell).From, Outer(rows[^1], _depths.Outside - _depths.SpindleIn - 8, _depths.Outside + _cell).To));
    }

    private Polyline Runner(PlanBarrel barrel)
    {
        const double half = 14;
        var (from, to) = Outer(RowOf(barrel.Bank), _depths.HeadDepth, _depths.Outside - _depths.SpindleIn - 8);
        return Polyline.Rectangle(_frame.Box((Along(barrel) - half, Along(barrel) + half), (from, to)));
    }

    private ChartPoint CylinderAt(PlanBarrel barrel, int which)
    {
        var (from, to) = Outer(RowOf(barrel.Bank), 0, _depths.HeadDepth);
        var apart = which - (barrel.Cylinders.Count - 1) / 2.0;
        return _frame.At(Along(barrel) + apart * (2 * _depths.CylinderRadius + 4), (from + to) / 2);
    }

    // Lying, a name stands in the head between its barrels, a word a line; upright, at the front of its carburettor.
    private IEnumerable<EngineWord> Name(PlanCarburettor carburettor)
    {
        var barrels = carburettor.Barrels.Select(n => _plan.Barrels[n - 1]).ToList();
        if (barrels.Select(b => b.Bank).Distinct().Count() > 1)
        {
            return [];
        }

        var row = RowOf(barrels[0].Bank);
        if (_frame.Upright)
        {
            var (from, to) = Outer(row, _depths.Outside, _depths.Outside + _cell);
            return [new EngineWord(carburettor.Name, _frame.At(barrels.Min(Along) - _pitch / 2 - 3, (from + to) / 2), 14, Bold: true)];
        }

        var middle = barrels.Count > 1 ? barrels.Average(Along) : Along(barrels[0]) + _pitch / 2 - Edge;
        var words = carburettor.Name.Split(' ', 2);
        var (top, bottom) = Outer(row, 0, _depths.HeadDepth);
        var centre = (top + bottom) / 2 + 5;
        return words.Select((w, k) => new EngineWord(w, new ChartPoint(middle, centre + (k - (words.Length - 1) / 2.0) * 16), 14, Bold: true));
    }

    private AdjusterPlace? Adjuster(Adjuster adjuster) => adjuster.Kind switch
    {
        AdjusterKind.BypassScrew => AdjusterPlace.Spot(adjuster, AdjusterForm.Screw, Corner(adjuster, -1)),
        AdjusterKind.MixtureScrew => AdjusterPlace.Spot(adjuster, AdjusterForm.Screw, Corner(adjuster, 1)),
        AdjusterKind.StopScrew => AdjusterPlace.Spot(adjuster, AdjusterForm.Screw, Stop(adjuster)),
        AdjusterKind.LinkRod => Rod(adjuster),
        AdjusterKind.BankRod => AdjusterPlace.Rod(adjuster, _frame.At(_first + Length + 22, SpindleAcross(0)), _frame.At(_first + Length + 22, SpindleAcross(1))),
        _ => null,
    };

    // The upper corners of a barrel's cell are free: the ring is round. Neighbours of two cells stand a finger apart where the ring leaves room.
    private ChartPoint Corner(Adjuster adjuster, int side)
    {
        var centre = Centre(_plan.Barrels[adjuster.Barrels[0] - 1]);
        var room = (_frame.Upright ? _cell : _pitch) / 2;
        var up = 0.82 * Reach;
        var clearOfRing = Math.Sqrt(Math.Pow(Reach + ScrewOffRing, 2) - up * up);
        return new ChartPoint(centre.X + side * Math.Max(clearOfRing, Math.Min(room - TouchArea.Radius, Reach + 12)), centre.Y - up);
    }

    private ChartPoint Stop(Adjuster adjuster)
    {
        var barrels = adjuster.Barrels.Select(n => _plan.Barrels[n - 1]).ToList();
        return _frame.At(barrels.Average(Along), SpindleAcross(RowOf(barrels[0].Bank)));
    }

    private AdjusterPlace Rod(Adjuster adjuster)
    {
        var first = _plan.Barrels[adjuster.Barrels[0] - 1];
        var row = Row(first.Bank);
        var before = row[row.FindIndex(b => b.Number == first.Number) - 1];
        var across = SpindleAcross(RowOf(first.Bank));
        var middle = (Along(before) + Along(first)) / 2;
        return AdjusterPlace.Rod(adjuster, _frame.At(middle - 26, across), _frame.At(middle + 26, across));
    }
}
