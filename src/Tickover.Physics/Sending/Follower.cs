namespace Tickover.Physics.Sending;

/// <summary>A first-order lag behind something that goes straight from step to step; without error then. docs/physics/sending.md (19).</summary>
internal sealed class Follower
{
    private readonly double _keep;
    private readonly double _old;
    private readonly double _new;
    private double _target;

    internal Follower(double lagSeconds, double stepSeconds)
    {
        var ratio = Precondition.NotNegative(lagSeconds) / stepSeconds;
        _keep = ratio > 0 ? Math.Exp(-1 / ratio) : 0;
        var spread = ratio > 0 ? ratio * (1 - _keep) : 0;
        (_old, _new) = (spread - _keep, 1 - spread); // sending (19)
    }

    internal double Value { get; set; }

    internal void Start(double target) => (Value, _target) = (target, target);

    internal double Step(double target)
    {
        Value = _keep * Value + _old * _target + _new * target;
        _target = target;
        return Value;
    }
}
