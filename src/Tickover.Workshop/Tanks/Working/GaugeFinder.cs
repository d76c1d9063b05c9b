using Tickover.Physics.Gauges;
using Tickover.Physics.Tanks;
using Tickover.Workshop.Tanks.Parts;

namespace Tickover.Workshop.Tanks.Working;

/// <summary>Judges sender and gauge, and tells ohms and needle for a filling.</summary>
internal sealed class GaugeFinder
{
    private const double KnownArm = 0.05;
    private const double KnownShape = 0.08;
    private const double KnownVolume = 0.1;
    private const double Usable = 6;         // l above what cannot be reached at which E is wanted: 5 to 8 l, common practice
    private const double Likely = 0.5;

    private readonly TankSet _set;
    private readonly TankFuel? _fuel;
    private readonly MonotoneCurve? _needles;

    public GaugeFinder(TankSet set, TankFuel? fuel, double? unusableLitres)
    {
        (_set, _fuel) = (set, fuel);
        EmptyLitres = set.Gauge?.EmptyLitres ?? (unusableLitres ?? 0) + Usable;
        FullLitres = set.Gauge?.FullLitres ?? set.CapacityLitres;
        _needles = NeedleCurve(set.Readings);
        Verdict = set.Readings.Count > 0 ? Judge() : null;
    }

    public double EmptyLitres { get; }

    public double FullLitres { get; }

    public SenderVerdict? Verdict { get; }

    public bool IsNeedleRead => _needles is not null;

    /// <summary>Ohms with so much fuel in, m³; null where nothing tells them.</summary>
    public double? Ohms(double cubicMetres) => Verdict?.Curve is { } curve
        ? Math.Max(0, curve.Curve.At(Math.Clamp(cubicMetres, curve.Curve.First, curve.Curve.Last)))
        : _set.Sender?.Family?.OhmsAt(Travel(cubicMetres, null));

    /// <summary>The needle with so much fuel in, m³; null where nothing tells it.</summary>
    public double? Needle(double cubicMetres) => _needles is { } read
        ? read.At(Math.Clamp(cubicMetres, read.First, read.Last))
        : Gauge() is { } gauge && Ohms(cubicMetres) is { } ohms ? new GaugeLaw { Family = gauge }.NeedleAt(ohms) : null;

    /// <summary>The needle when the car stands so: that of the level filling with the same depth at the float.</summary>
    public double? NeedleIn(double cubicMetres, TankStance stance)
    {
        if (_fuel is null || Needle(0) is null)
        {
            return null;
        }

        var depth = _fuel.SenderDepth(cubicMetres, stance);
        var (low, high) = (0.0, TankUnits.CubicMetres(_set.CapacityLitres));
        while (high - low > 1e-6)
        {
            var middle = (low + high) / 2;
            (low, high) = _fuel.SenderDepth(middle, null) < depth ? (middle, high) : (low, middle);
        }

        return Needle(high);
    }

    private double TravelDeviation => _fuel is null ? KnownVolume : _set.Sender?.Arm is null ? KnownShape : KnownArm;

    private SenderVerdict Judge()
    {
        var diagnosis = SenderDiagnosis.Of(new SenderSurvey
        {
            Readings = _set.Readings,
            Travel = v => Travel(v, null),
            TravelDeviation = TravelDeviation,
            Sender = _set.Sender?.Family,
            Gauge = _set.Gauge?.Family,
        });
        var curve = SenderCurve.Of(_set.Readings);
        var gauge = _set.Gauge?.Family ?? (diagnosis.Gauges[0].Probability > Likely ? diagnosis.Gauges[0].Family : null);
        var verdict = new SenderVerdict { Diagnosis = diagnosis, Curve = curve };
        if (curve is null || gauge is null || FullLitres <= EmptyLitres)
        {
            return verdict;
        }

        var cures = GaugeCures.Of(Bench(curve, gauge));
        return verdict with { Cures = cures, Advised = GaugeCures.Advised(cures), Gauge = gauge };
    }

    private GaugeBench Bench(SenderCurve curve, SenderFamily gauge) => new()
    {
        Sender = Held(curve.Curve),
        Gauge = new GaugeLaw { Family = gauge },
        EmptyCubicMetres = TankUnits.CubicMetres(EmptyLitres),
        FullCubicMetres = TankUnits.CubicMetres(FullLitres),
        Arm = _fuel is null ? null : _set.Sender?.Arm,
        Table = _fuel is not null && _set.Sender?.Place is { } place ? StrappingTable.Of(_set.Joined!, place) : null,
    };

    // Beyond the readings nothing is known; going on straight would make up ohms.
    private MonotoneCurve Held(MonotoneCurve curve)
    {
        var full = TankUnits.CubicMetres(FullLitres);
        var points = Enumerable.Range(0, 61).Select(i => curve.First + (curve.Last - curve.First) * i / 60).Select(x => (X: x, Y: curve.At(x))).ToList();
        if (curve.First > 0)
        {
            points.Insert(0, (0, points[0].Y));
        }

        if (curve.Last < full)
        {
            points.Add((full, points[^1].Y));
        }

        return MonotoneCurve.Through(points) ?? curve;
    }

    private SenderFamily? Gauge() => _set.Gauge?.Family ?? Verdict?.Gauge;

    private double Travel(double cubicMetres, TankStance? stance)
    {
        if (_fuel is null)
        {
            return Math.Clamp(TankUnits.Litres(cubicMetres) / _set.CapacityLitres, 0, 1);
        }

        var depth = _fuel.SenderDepth(cubicMetres, stance);
        return _set.Sender?.Arm is { } arm
            ? arm.TravelAt(depth)
            : Math.Clamp(depth / Math.Max(1e-6, _fuel.SenderDepth(TankUnits.CubicMetres(_set.CapacityLitres), null)), 0, 1);
    }

    private static MonotoneCurve? NeedleCurve(IReadOnlyList<SenderReading> readings)
    {
        // The needle is made monotone the same way as the ohms.
        var read = readings.Where(r => r.Needle is not null).ToArray();
        return SenderCurve.Of(read.Select(r => r with { Ohms = r.Needle, Needle = null }))?.Curve;
    }
}
