using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising.Mixture;

/// <summary>What was turned and read of one mixture screw, in order.</summary>
internal sealed class ScrewHistory
{
    private readonly List<(double Position, double Value)> _readings;

    /// <summary>Gathers it.</summary>
    /// <param name="book">The book.</param>
    /// <param name="screw">The screw.</param>
    /// <param name="value">What is read of its barrel; null where a round has none of it.</param>
    /// <param name="forgets">Whether what was read counts no more once other air goes through its barrels.</param>
    public ScrewHistory(BalanceBook book, Adjuster screw, Func<BarrelReading, double?> value, bool forgets)
    {
        _readings = [];
        foreach (var step in book.Steps)
        {
            if (step is Turned turned && string.Equals(turned.Adjuster, screw.Key, StringComparison.OrdinalIgnoreCase))
            {
                Position += turned.Turns;
                (Turns, IsRead) = (Turns + 1, false);
            }
            else if (forgets && MovesAir(step, screw, book.Plan))
            {
                _readings.Clear();
                IsRead = false;
            }
            else if (step is RoundRead { Round: { HeldRpm: null } round } && Value(round, screw, value) is { } read)
            {
                _readings.Add((Position, read));
                IsRead = true;
            }
        }
    }

    private ScrewHistory(double position, int turns, bool isRead, List<(double Position, double Value)> readings) =>
        (Position, Turns, IsRead, _readings) = (position, turns, isRead, readings);

    /// <summary>What was turned and read of the mixture screws of a bank, all turned alike.</summary>
    /// <param name="book">The book.</param>
    /// <param name="bank">Number of the bank.</param>
    /// <param name="screws">Its mixture screws.</param>
    /// <returns>The mean position of the screws, how often they were turned between readings, and the readings of the bank.</returns>
    public static ScrewHistory OfBank(BalanceBook book, int bank, IReadOnlyList<Adjuster> screws)
    {
        var (position, turns, isRead, readings) = (0.0, 0, false, new List<(double Position, double Value)>());
        foreach (var step in book.Steps)
        {
            if (step is BankGas gas && gas.Bank == bank)
            {
                readings.Add((position, gas.Lambda));
                isRead = true;
            }
            else if (step is Turned turned && screws.Any(s => string.Equals(s.Key, turned.Adjuster, StringComparison.OrdinalIgnoreCase)))
            {
                position += turned.Turns / screws.Count;
                (turns, isRead) = (isRead ? turns + 1 : turns, false);
            }
            else if (screws.Any(s => MovesAir(step, s, book.Plan)))
            {
                readings.Clear();
                isRead = false;
            }
        }

        return new ScrewHistory(position, turns, isRead, readings);
    }

    /// <summary>Position now, turns from where it was found, positive richer.</summary>
    public double Position { get; }

    /// <summary>How often it was turned.</summary>
    public int Turns { get; }

    /// <summary>Whether its barrel was read since it was last turned.</summary>
    public bool IsRead { get; }

    /// <summary>Readings with the position at which each was taken.</summary>
    public IReadOnlyList<(double Position, double Value)> Readings => _readings;

    private static bool MovesAir(BalanceStep step, Adjuster screw, EnginePlan plan) => step switch
    {
        RodsTakenOff or RodsPutBack or CheckedFor { Found: true } => true,
        Turned turned => plan.Find(turned.Adjuster) is { Kind: not (AdjusterKind.MixtureScrew or AdjusterKind.JetNut) } other && other.Barrels.Intersect(screw.Barrels).Any(),
        _ => false,
    };

    private static double? Value(BalanceRound round, Adjuster screw, Func<BarrelReading, double?> value)
    {
        var read = round.Readings.Where(r => screw.Barrels.Contains(r.Barrel)).Select(value).OfType<double>().ToList();
        return read.Count > 0 ? read.Average() : null;
    }
}
