namespace Tickover.Practice.Virtual;

/// <summary>What changes by itself: the engine warms, and wanders a little.</summary>
internal sealed class Drift
{
    private const double HotCelsius = 90;
    private const double WarmingMinutes = 15;
    private const double WanderMinutes = 15;
    private const double FrictionPerDegree = 0.004;
    private readonly Dice _dice;
    private readonly double _wander;
    private double _away;

    public Drift(int seed, int difficulty)
    {
        _dice = new Dice(seed, "drift");
        var hard = difficulty >= PracticeEngine.Hardest;
        Oil = hard ? _dice.Between(55, 65) : _dice.Between(76, 84);
        _wander = hard ? 0.03 : 0.012;
        _away = _dice.Normal(_wander);
    }

    /// <summary>Oil temperature, °C.</summary>
    public double Oil { get; private set; }

    /// <summary>Friction against that of the hot engine.</summary>
    public double Friction => 1 + (FrictionPerDegree * (HotCelsius - Oil)) + _away;

    /// <summary>Lets time go by.</summary>
    public void Pass(double minutes)
    {
        Oil = HotCelsius - ((HotCelsius - Oil) * Math.Exp(-minutes / WarmingMinutes));
        var kept = Math.Exp(-minutes / WanderMinutes);
        _away = (_away * kept) + _dice.Normal(_wander * Math.Sqrt(1 - (kept * kept)));
    }
}
