namespace Tickover.Practice.Virtual;

/// <summary>One thing that is turned: where it stands, and where that puts what it moves.</summary>
internal sealed class Screw
{
    private const double LockingTurns = 2.0 / 360;
    private const double HandTurns = 3.0 / 360;
    private int _lastWay;

    /// <summary>Its key in the plan.</summary>
    public required string Key { get; init; }

    /// <summary>What a turn does: degrees, mm² or part of the fuel.</summary>
    public required double Gain { get; init; }

    /// <summary>From one end to the other, turns.</summary>
    public required double Travel { get; init; }

    /// <summary>Smallest steps to a turn.</summary>
    public required int StepsATurn { get; init; }

    /// <summary>Turned this much before it moves anything, when the way is changed; turns.</summary>
    public required double Backlash { get; init; }

    /// <summary>Turned out so far from its shut end before it does anything, turns.</summary>
    public double DeadStart { get; init; }

    /// <summary>Where it works from: what it moves stands at zero here, turns.</summary>
    public double Zero { get; init; }

    /// <summary>Whether it is seized, broken or blocked.</summary>
    public bool Dead { get; set; }

    /// <summary>Where it stands, turns from its shut end.</summary>
    public double Position { get; set; }

    /// <summary>Where what it moves stands, turns from the shut end.</summary>
    public double Reached { get; set; }

    /// <summary>What it does now, in the unit of <see cref="Gain"/>.</summary>
    public double Effect => Gain * (Reached < DeadStart + Zero && DeadStart > 0 ? 0 : Reached - DeadStart - Zero);

    /// <summary>Puts it where it does so much.</summary>
    public void SetEffect(double effect)
    {
        Position = Math.Clamp((effect / Gain) + Zero + DeadStart, 0, Travel);
        Reached = Position;
    }

    /// <summary>Turns it, with the hand's error, the backlash and what locking moves.</summary>
    /// <returns>Turns it was really turned: less where it came to its end.</returns>
    public double Turn(double turns, Dice hand)
    {
        var steps = Math.Round(turns * StepsATurn) / StepsATurn;
        var aim = Math.Clamp(Position + steps, 0, Travel);
        var turned = Math.Round((aim - Position) * StepsATurn, 6) / StepsATurn;
        Position = aim;
        var error = hand.Normal(HandTurns) + hand.Normal(LockingTurns);
        if (Dead || turned == 0)
        {
            return turned;
        }

        var way = Math.Sign(turned);
        var lost = _lastWay != 0 && way != _lastWay ? Math.Min(Backlash, Math.Abs(turned)) : 0;
        _lastWay = way;
        Reached = Math.Clamp(Reached + turned - (way * lost) + error, 0, Travel);
        return turned;
    }
}
