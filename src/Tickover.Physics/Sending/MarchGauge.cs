using Tickover.Physics.Gauges;

namespace Tickover.Physics.Sending;

/// <summary>Sender, circuit and needle on the march.</summary>
internal sealed class MarchGauge
{
    private readonly SenderFamily _family;
    private readonly FloatArm _arm;
    private readonly FloatArm? _second;
    private readonly OhmsTable _table;
    private readonly OhmsTable? _secondTable;
    private readonly RestingNeedle _rest;
    private readonly double _lampTravel;
    private readonly Follower _average;
    private readonly Follower _needle;

    internal MarchGauge(TwoTanks tanks, double step)
    {
        (_family, _arm, _second) = (tanks.Gauge.Circuit.Sender, tanks.Sender.Arm, tanks.SecondSender?.Arm);
        _table = new OhmsTable(_arm, _family);
        _secondTable = _second is null ? null : new OhmsTable(_second, _family);
        _rest = tanks.Gauge.Circuit.ToRest();
        _lampTravel = tanks.Gauge.LampTravel;
        _average = new Follower(tanks.Gauge.AveragingSeconds, step);
        _needle = new Follower(tanks.Gauge.LagSeconds, step);
    }

    internal bool Second => _second is not null;

    internal double Needle => _needle.Value;

    internal double TravelAt(double level) => _arm.TravelAt(level);

    internal double OhmsAt(double level, double secondLevel)
    {
        var first = _family.OhmsAt(_arm.TravelAt(level)); // sending (16)
        return _second is { } second ? 0.5 * (first + _family.OhmsAt(second.TravelAt(secondLevel))) : first;
    }

    internal bool LampLit(double level) => _arm.TravelAt(level) < _lampTravel;

    internal void Start(double level, double secondLevel, double? needle)
    {
        var ohms = OhmsAt(level, secondLevel);
        _average.Start(ohms);
        _needle.Start(_rest.NeedleAt(ohms));
        if (needle is { } given)
        {
            _needle.Value = given;
        }
    }

    internal void Step(double level, double secondLevel)
    {
        var ohms = _table.At(level);
        ohms = _secondTable is { } second ? 0.5 * (ohms + second.At(secondLevel)) : ohms;
        _needle.Step(_rest.NeedleAt(_average.Step(ohms)));
    }
}
