namespace Tickover.Workshop.Balance.Recorded;

/// <summary>How the barrels stand now at one speed: the latest reading of each, those from before a turn or of an older round marked hollow.</summary>
public sealed record BarrelsNow
{
    private const double Ninety = 1.645;

    /// <summary>Speed held, rpm; null at idle.</summary>
    public double? HeldRpm { get; init; }

    /// <summary>The barrels in order of number.</summary>
    public required IReadOnlyList<BarrelStanding> Barrels { get; init; }

    /// <summary>Mean of the latest readings, kg/h; null while a barrel was never read at this speed.</summary>
    public double? Mean { get; init; }

    /// <summary>Largest less smallest of the latest readings, kg/h.</summary>
    public double Spread { get; init; }

    /// <summary>The limit off the mean, kg/h; zero without a mean.</summary>
    public double Limit { get; init; }

    /// <summary>What a reading's deviation is good to, ± 90 %, kg/h.</summary>
    public double Band { get; init; }

    /// <summary>Gathers the latest readings.</summary>
    /// <param name="book">The balancing.</param>
    /// <param name="advice">What was made of it.</param>
    /// <param name="heldRpm">Speed held, rpm; null at idle.</param>
    /// <returns>The barrels; not read where nothing was.</returns>
    public static BarrelsNow Of(BalanceBook book, BalanceAdvice advice, double? heldRpm)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(advice);
        var rounds = advice.Rounds.Where(r => r.Round.HeldRpm == heldRpm && !r.IsVoid && r.Barrels.Any(b => b.Air is not null)).ToList();
        var latest = book.Plan.Barrels.Select(b => Latest(rounds, b.Number)).ToList();
        var known = latest.OfType<(BarrelStanding Standing, bool IsOlder)>().Select(l => l.Standing.Air!.Value).ToList();
        var mean = known.Count == latest.Count ? known.Average() : (double?)null;
        var limit = mean is { } m ? book.Limits.OffMean(heldRpm is null, m) : 0;
        var deviation = Math.Max(advice.Repeatability, book.Meter.AirPart * (mean ?? 0));
        var band = Ninety * deviation * Math.Sqrt(1 + (1.0 / Math.Max(known.Count, 1)));
        return new BarrelsNow
        {
            HeldRpm = heldRpm,
            Barrels = [.. book.Plan.Barrels.Select((b, k) => Stands(b.Number, latest[k], mean, limit, band))],
            Mean = mean,
            Spread = known.Count > 0 ? known.Max() - known.Min() : 0,
            Limit = limit,
            Band = band,
        };
    }

    // While a new round is being read, what it has not reached yet is older.
    private static (BarrelStanding Standing, bool IsOlder)? Latest(List<RoundAccount> rounds, int barrel)
    {
        var at = rounds.FindLastIndex(r => r.Barrels[barrel - 1].Air is not null);
        return at < 0 ? null : (rounds[at].Barrels[barrel - 1], rounds.Skip(at + 1).Any(IsWholeToBe));
    }

    private static bool IsWholeToBe(RoundAccount round) => round.Round.Readings.Count > 1 && round.Barrels[0].Air is not null;

    private static BarrelStanding Stands(int barrel, (BarrelStanding Standing, bool IsOlder)? latest, double? mean, double limit, double band)
    {
        if (latest is not { } known)
        {
            return new BarrelStanding(barrel, null, 0, mean > 0 ? limit / mean.Value : 0, 0, Standing.NotRead, IsHollow: false);
        }

        var hollow = known.Standing.IsHollow || known.IsOlder;
        if (mean is not > 0)
        {
            return new BarrelStanding(barrel, known.Standing.Air, 0, 0, 0, Standing.Within, hollow);
        }

        var off = known.Standing.Air!.Value - mean.Value;
        var standing = Math.Abs(off) + band <= limit ? Standing.Within
            : Math.Abs(off) - band <= limit ? Standing.CannotTell
            : off > 0 ? Standing.High : Standing.Low;
        return new BarrelStanding(barrel, known.Standing.Air, off / mean.Value, limit / mean.Value, band / mean.Value, standing, hollow);
    }
}
