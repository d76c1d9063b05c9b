namespace Tickover.Workshop.Balance.Recorded;

/// <summary>What is read next and in which order.</summary>
/// <param name="Measure">What is read.</param>
/// <param name="Round">Number of the round the readings go into.</param>
/// <param name="Sequence">Barrels in order, the first again at the end of a whole round.</param>
/// <param name="Read">Those read in it so far, in order.</param>
public sealed record ReadPlan(RoundMeasure Measure, Guid Round, IReadOnlyList<int> Sequence, IReadOnlyList<int> Read)
{
    /// <summary>What is left to read, in order. A barrel read again at once is a repeat; the first one again is the proof only when all others are read.</summary>
    public IReadOnlyList<int> Left => LeftOf(Sequence, Read);

    /// <summary>The barrel to read now; null where all are read.</summary>
    public int? Next => Left is [var first, ..] ? first : null;

    /// <summary>Whether only the proof is wanting: the first barrel again.</summary>
    public bool IsProof => Read.Count > 0 && Left is [var last] && last == Sequence[0];

    /// <summary>Whether barrels of a whole round are still to be read, so that nothing should be turned yet.</summary>
    public bool IsUnderWay => Read.Count > 0 && Left.Count > (IsProof ? 1 : 0);

    /// <summary>What is to be read on a visit.</summary>
    /// <param name="balance">The balancing.</param>
    /// <param name="next">What the advice asks for.</param>
    /// <param name="chosen">What a person chose to read instead; null takes the advice.</param>
    /// <returns>The plan.</returns>
    public static ReadPlan Of(BalanceOfVisit balance, NextMove next, RoundMeasure? chosen)
    {
        ArgumentNullException.ThrowIfNull(balance);
        ArgumentNullException.ThrowIfNull(next);
        var barrels = balance.Plan.Barrels.Select(b => b.Number).ToList();
        IReadOnlyList<int> all = [.. barrels, barrels[0]];
        if (chosen is null && balance.WantingProof(all) is { } proof)
        {
            return proof;
        }

        var measure = chosen ?? RoundMeasure.Of(next.HeldRpm, next.Read);
        var isAsked = next.Kind == NextKind.Read && next.Barrels.Count > 0 && measure.HeldRpm == next.HeldRpm;
        IReadOnlyList<int> sequence = isAsked ? next.Barrels : all;

        // Some barrels of a whole round that was begun are what the advice still asks for.
        if (isAsked && balance.Open(measure, all) is { Read.Count: > 0 } whole && whole.Read.SequenceEqual(all.Take(whole.Read.Count)))
        {
            return new ReadPlan(measure, whole.Round, all, whole.Read);
        }

        var (round, read) = balance.Open(measure, sequence);
        return new ReadPlan(measure, round, sequence, read);
    }

    internal static IReadOnlyList<int> LeftOf(IReadOnlyList<int> sequence, IReadOnlyList<int> read)
    {
        var left = sequence.ToList();
        foreach (var barrel in read)
        {
            var at = left.IndexOf(barrel);
            var isProofTooEarly = at == left.Count - 1 && left.Count > 1 && barrel == sequence[0];
            if (at >= 0 && !isProofTooEarly)
            {
                left.RemoveAt(at);
            }
        }

        return left;
    }
}
