using Tickover.Workshop.Balance;

namespace Tickover.Practice.Virtual;

/// <summary>What the instruments make of the truth.</summary>
internal sealed class Meter
{
    private const double AirNoise = 0.1;
    private const double AirNoisePart = 0.02;
    private const double GainScatter = 0.04;
    private const double VacuumNoise = 0.5;
    private const double VacuumZero = 1;
    private const double LambdaNoise = 0.015;
    private const double HeaderNoise = 15;
    private const double RpmNoise = 5;
    private readonly Dice _dice;
    private readonly double _gain;
    private readonly double _zero;
    private readonly double _noise;
    private readonly double _upset;

    public Meter(int seed, int difficulty)
    {
        _dice = new Dice(seed, "meter");
        _gain = 1 + _dice.Between(-GainScatter, GainScatter);
        _zero = _dice.Between(-VacuumZero, VacuumZero);
        _noise = difficulty >= PracticeEngine.Hardest ? 1.5 : 1;
        _upset = difficulty >= PracticeEngine.Hardest ? 0.015 : 0;
    }

    /// <summary>One reading.</summary>
    public BarrelReading Read(VirtualEngine engine, EngineState state, int barrel, ReadKinds what)
    {
        var truth = state.Barrels[barrel - 1];
        return new(barrel)
        {
            Rpm = Math.Round((state.Rpm + _dice.Normal(RpmNoise)) / 10) * 10,
            Air = what.HasFlag(ReadKinds.Air) ? Air(truth.Air * engine.Barrels[barrel - 1].Seal) : null,
            Vacuum = what.HasFlag(ReadKinds.Vacuum) ? Math.Round(Math.Max(0, truth.Vacuum + _zero + _dice.Normal(VacuumNoise * _noise)), 1) : null,
            Lambda = what.HasFlag(ReadKinds.Lambda) ? Math.Round(truth.Lambda + _dice.Normal(LambdaNoise * _noise), 2) : null,
            Header = what.HasFlag(ReadKinds.Header) ? Math.Round(Header(engine, state, barrel) + _dice.Normal(HeaderNoise)) : null,
        };
    }

    private double Air(double truth)
    {
        var read = truth * _gain;
        read = Math.Round(Math.Max(0, read + _dice.Normal(Math.Max(AirNoise, AirNoisePart * read) * _noise)), 1);
        return _dice.Unit() < _upset ? Transposed(read) : read;
    }

    // two people calling numbers in a noisy shop: 3.6 is written down as 6.3
    private static double Transposed(double read)
    {
        var tenths = (int)Math.Round(read * 10);
        return tenths is >= 10 and < 100 ? ((tenths % 10 * 10) + (tenths / 10)) / 10.0 : read;
    }

    // a header at idle some 300 °C, hotter with speed, with a late spark and with a cylinder that burns all it gets (assumed shape)
    private static double Header(VirtualEngine engine, EngineState state, int barrel)
    {
        var truth = state.Barrels[barrel - 1];
        var one = engine.Barrels[barrel - 1];
        const double AtIdle = 300;
        return AtIdle + (90 * ((state.Rpm / engine.Plan.IdleRpm) - 1)) + (9 * engine.Late[one.Bank]) - (150 * (1 - one.Pull)) - (120 * Math.Abs(truth.Lambda - 1));
    }
}
