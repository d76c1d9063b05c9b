using Tickover.Practice;
using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Bench.Balance;

/// <summary>What every habit does with its hands: reads whole rounds again after each turn, turns an eighth towards the mean, gives up when it has gone round too often.</summary>
internal sealed class HabitHands(Workbench engine)
{
    public const double Eighth = 0.125;

    /// <summary>One is pleased within this at idle, kg/h: good hands (trade report 2.4).</summary>
    public const double Pleased = 0.25;

    private const double Drifted = 0.25;
    private const double SpeedOff = 100;
    private const int MostMoves = 150;

    public Workbench Engine { get; } = engine;

    public EnginePlan Plan => Engine.Plan;

    /// <summary>Whether patience has run out.</summary>
    public bool Tired => Engine.Moves >= MostMoves;

    /// <summary>Speed of the last round, rpm.</summary>
    public double Rpm { get; private set; }

    /// <summary>Air of every barrel; a round that drifted is read once more. Empty where the engine would not run so.</summary>
    public double[] Air(double? held = null) => Read(held, ReadKinds.Air, r => r.Air!.Value, held is null ? Drifted : 1);

    /// <summary>Vacuum of every barrel, kPa.</summary>
    public double[] Vacuum(double? held = null) => Read(held, ReadKinds.Vacuum, r => r.Vacuum!.Value, 2);

    /// <summary>Turns an eighth, or as many as said.</summary>
    public bool Turn(string key, double turns) => Engine.Turn(key, turns).Done;

    /// <summary>All stops alike until the speed is about right: more air for all when slow.</summary>
    public void SetSpeed(IReadOnlyList<string> stops)
    {
        for (var i = 0; i < 6 && Math.Abs(Rpm - Plan.IdleRpm) > SpeedOff && !Tired; i++)
        {
            foreach (var stop in stops)
            {
                Turn(stop, Rpm < Plan.IdleRpm ? Eighth : -Eighth);
            }

            Air();
        }
    }

    /// <summary>Within limits as read.</summary>
    public bool IdleGood(double[] air) => PracticeLimits.AtIdle(Plan, air);

    /// <summary>Within limits as read.</summary>
    public bool OffIdleGood(double[] air) => PracticeLimits.OffIdle(Plan, air);

    /// <summary>Mean of some barrels.</summary>
    public static double Mean(double[] air, IEnumerable<int> barrels) => barrels.Average(b => air[b - 1]);

    private double[] Read(double? held, ReadKinds what, Func<BarrelReading, double> of, double drifted)
    {
        for (var again = 0; ; again++)
        {
            if (Engine.ReadRound(held, what).Step is not RoundRead { Round: var round })
            {
                return [];
            }

            Rpm = held is null ? round.Readings.Average(r => r.Rpm!.Value) : Rpm;
            if (again == 1 || Math.Abs(of(round.Again!) - of(round.Readings[0])) <= drifted)
            {
                return [.. round.Readings.Select(of)];
            }
        }
    }
}
