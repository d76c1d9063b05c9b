using System.Globalization;
using Tickover.Reports.Charts;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Reports.Balance;

/// <summary>Places an engine with one row of carburettors: head, runners, carburettors, trumpets, and a ring before each barrel.</summary>
internal sealed class InLinePlacing
{
    private const double LargestPitch = 160;
    private const double LargestReach = 54;
    private const double Overhang = 0.27;
    private const double SingleOverhang = 0.36;
    private const double Between = 0.14;
    private const double FrontRoom = 22;
    private readonly EnginePlan _plan;
    private readonly Frame _frame;
    private readonly InLineDepths _depths;
    private readonly double _pitch;
    private readonly double _first;

    private InLinePlacing(EnginePlan plan, PictureSize size)
    {
        _plan = plan;
        // The carburettors of a motorcycle stand side by side across it, so they never turn with the screen.
        var isMotorcycle = plan.Layout == PlanLayout.MotorcycleFour;
        _frame = new Frame(size == PictureSize.Phone && !isMotorcycle, isMotorcycle ? FrontRoom : 0);
        _depths = _frame.Upright ? InLineDepths.Upright : InLineDepths.Lying;
        Width = size == PictureSize.Full ? EngineGeometry.FullWidth : EngineGeometry.PhoneWidth;
        var (count, gaps) = (plan.Barrels.Count, plan.Carburettors.Count - 1);
        var units = count - 1 + gaps * Between + 2 * OverhangOf(plan);
        var margin = size == PictureSize.Full ? 64 : 16;
        var room = Width - 2 * margin;
        _pitch = _frame.Upright ? _depths.Pitch : Math.Min(LargestPitch, room / Math.Max(units, 1));
        Length = _pitch * units;
        _first = (_frame.Upright ? _depths.FrontRoom : margin + (room - Length) / 2) + _pitch * OverhangOf(plan);
    }

    private double Width { get; }

    private double Length { get; }

    internal static EngineGeometry Of(EnginePlan plan, PictureSize size) => new InLinePlacing(plan, size).Place();

    private EngineGeometry Place()
    {
        var reach = Math.Min(_frame.Upright ? _depths.Reach : LargestReach, _pitch / 2 - 3);
        var rings = _plan.Barrels.ToDictionary(b => b.Number, b => _frame.At(Along(b.Number), _depths.TrumpetEnd + _depths.AirLength + reach));
        var depth = _depths.TrumpetEnd + _depths.AirLength + 2 * reach + 44;
        var (from, to) = (_first - OverhangOf(_plan) * _pitch - 14, _first - OverhangOf(_plan) * _pitch + Length + 14);
        return new EngineGeometry
        {
            Width = Width,
            Height = _frame.Upright ? to + 12 : depth + _frame.Above,
            RingReach = reach,
            Rings = rings,
            LabelsBeside = _frame.Upright,
            Heads = [_frame.Box((from, to), (1, _depths.HeadDepth))],
            Bodies = [.. _plan.Carburettors.Select(Body)],
            Castings = [.. Manifold(), .. _plan.Barrels.Select(b => Trumpet(Along(b.Number)))],
            Spindles = [(_frame.At(from + 2, _depths.Spindle), _frame.At(to - 2, _depths.Spindle))],
            Cylinders = [.. Enumerable.Range(1, _plan.Cylinders).Select(c => (c, _frame.At(CylinderAlong(c), _depths.HeadDepth / 2)))],
            CylinderRadius = Math.Min(_depths.CylinderRadius, Length / _plan.Cylinders / 2 - 3),
            Adjusters = [.. _plan.Adjusters.Select(Adjuster).OfType<AdjusterPlace>()],
            Words = [.. _plan.Carburettors.Select(Name), FrontWord(from)],
            Air = [.. _plan.Barrels.Select(b => (_frame.At(Along(b.Number), _depths.TrumpetEnd + _depths.AirLength - 2), _frame.At(Along(b.Number), _depths.BodyEnd + 4)))],
            Front = Front(from),
        };
    }

    private static double OverhangOf(EnginePlan plan) => plan.Carburettors.All(c => c.Barrels.Count == 1) ? SingleOverhang : Overhang;

    private double Along(int barrel)
    {
        var place = _plan.Barrels.TakeWhile(b => b.Number != barrel).Count();
        return _first + _pitch * (place + Between * (_plan.Barrels[place].Carburettor - 1));
    }

    private double Middle(PlanCarburettor carburettor) => carburettor.Barrels.Average(Along);

    private bool OwnRunners => _plan.Barrels.All(b => b.Cylinders.Count == 1) && _plan.Barrels.Count == _plan.Cylinders;

    private double CylinderAlong(int cylinder)
    {
        if (OwnRunners)
        {
            return Along(_plan.Barrels.First(b => b.Cylinders[0] == cylinder).Number);
        }

        var start = _first - OverhangOf(_plan) * _pitch;
        return start + Length * (cylinder - 0.5) / _plan.Cylinders;
    }

    private Box Body(PlanCarburettor carburettor)
    {
        var over = OverhangOf(_plan) * _pitch;
        return _frame.Box((carburettor.Barrels.Min(Along) - over, carburettor.Barrels.Max(Along) + over), (_depths.BodyStart, _depths.BodyEnd));
    }

    // Each cylinder its runner; where barrels feed more than one, all meet in a chamber.
    private IEnumerable<Polyline> Manifold()
    {
        const double half = 14;
        if (OwnRunners)
        {
            return _plan.Barrels.Select(b => Across(Along(b.Number), half, half, _depths.HeadDepth, _depths.BodyStart));
        }

        var middle = (_depths.HeadDepth + _depths.BodyStart) / 2;
        var cylinders = Enumerable.Range(1, _plan.Cylinders).Select(CylinderAlong).ToList();
        var chamber = Polyline.Rectangle(_frame.Box((cylinders.Min() - half, cylinders.Max() + half), (middle - 5, middle + 7)));
        return
        [
            .. cylinders.Select(c => Across(c, half - 2, half - 2, _depths.HeadDepth, middle - 5)),
            .. _plan.Barrels.Select(b => Across(Along(b.Number), half, half, middle + 7, _depths.BodyStart)),
            chamber,
        ];
    }

    private Polyline Trumpet(double along) => Across(along, Math.Min(15, _pitch * 0.2), Math.Min(30, _pitch * 0.36), _depths.BodyEnd, _depths.TrumpetEnd);

    private Polyline Across(double along, double halfNear, double halfFar, double from, double to) => new(
        [_frame.At(along - halfNear, from), _frame.At(along + halfNear, from), _frame.At(along + halfFar, to), _frame.At(along - halfFar, to)], Closed: true);

    private EngineWord Name(PlanCarburettor carburettor)
    {
        var along = carburettor.Barrels.Count > 1 ? Middle(carburettor) : Middle(carburettor) + 0.24 * _pitch;
        var at = _frame.At(along, _depths.Number);
        return new EngineWord(carburettor.Number.ToString(CultureInfo.InvariantCulture), at with { Y = at.Y + 7 }, 20, Bold: true);
    }

    private (ChartPoint From, ChartPoint To) Front(double from) => _plan.Layout == PlanLayout.MotorcycleFour
        ? (new ChartPoint(Width / 2 + 34, 19), new ChartPoint(Width / 2 + 34, 3))
        : _frame.Upright ? (_frame.At(22, 56), _frame.At(4, 56)) : (_frame.At(from - 14, 40), _frame.At(from - 40, 40));

    private EngineWord FrontWord(double from) => _plan.Layout == PlanLayout.MotorcycleFour
        ? new EngineWord("front", new ChartPoint(Width / 2, 15), 14, Bold: false)
        : new EngineWord("front", _frame.Upright ? new ChartPoint(28, 18) : new ChartPoint(from - 27, 26), 14, Bold: false);

    private AdjusterPlace? Adjuster(Adjuster adjuster) => adjuster.Kind switch
    {
        AdjusterKind.BypassScrew => AdjusterPlace.Spot(adjuster, AdjusterForm.Screw, _frame.At(Along(adjuster.Barrels[0]), _depths.Bypass)),
        AdjusterKind.MixtureScrew => AdjusterPlace.Spot(adjuster, AdjusterForm.Screw, _frame.At(Along(adjuster.Barrels[0]), _depths.Mixture)),
        AdjusterKind.JetNut => AdjusterPlace.Spot(adjuster, AdjusterForm.Nut, _frame.At(Along(adjuster.Barrels[0]), _depths.Mixture)),
        AdjusterKind.StopScrew => AdjusterPlace.Spot(adjuster, AdjusterForm.Screw, _frame.At(StopAlong(adjuster), _depths.Spindle + (_frame.Upright ? 14 : 16))),
        AdjusterKind.MasterStop => AdjusterPlace.Spot(adjuster, AdjusterForm.Knob, _frame.At(Gap(_plan.Carburettors.Count / 2), _depths.Number)),
        AdjusterKind.CouplingScrew => AdjusterPlace.Spot(
            adjuster, adjuster.Key is "clamp" ? AdjusterForm.Nut : AdjusterForm.Coupling, _frame.At(CouplingAlong(adjuster), _depths.Spindle)),
        _ => null,
    };

    private double StopAlong(Adjuster adjuster)
    {
        var carburettor = _plan.Carburettors[int.Parse(adjuster.Key.AsSpan(adjuster.Key.IndexOf(':', StringComparison.Ordinal) + 1), CultureInfo.InvariantCulture) - 1];
        return carburettor.Barrels.Count > 1 ? Middle(carburettor) : Middle(carburettor) - 0.24 * _pitch;
    }

    /// <summary>Half way between a carburettor and the next.</summary>
    private double Gap(int before) => (Along(_plan.Carburettors[before - 1].Barrels[^1]) + Along(_plan.Carburettors[before].Barrels[0])) / 2;

    // A coupling stands where the barrels it moves meet those it does not; of a pair against a pair that is the middle.
    private double CouplingAlong(Adjuster adjuster)
    {
        var moved = _plan.Carburettors.Where(c => c.Barrels.Any(adjuster.Barrels.Contains)).Select(c => c.Number).ToList();
        if (_plan.Layout == PlanLayout.MotorcycleFour && moved.Count == 1)
        {
            return Gap(moved[0] <= 2 ? 1 : 3);
        }

        return Gap(moved.Min() > 1 ? moved.Min() - 1 : moved.Max());
    }
}
