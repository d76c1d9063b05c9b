using System.Globalization;
using Tickover.Reports.Balance;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Balance.Recorded;

namespace Tickover.Web.Balance;

/// <summary>What a page of balancing shows, of a car in the shop or of the practice engine.</summary>
public sealed record BalanceBench
{
    /// <summary>The balancing so far.</summary>
    public required BalanceBook Book { get; init; }

    /// <summary>What was made of it.</summary>
    public required BalanceAdvice Advice { get; init; }

    /// <summary>The barrels at the speed in hand.</summary>
    public required BarrelsNow Now { get; init; }

    /// <summary>What the last turn did; null where nothing was turned.</summary>
    public MoveProof? Proof { get; init; }

    /// <summary>What is to be read, of a car in the shop; null for the practice engine.</summary>
    public ReadPlan? Reading { get; init; }

    /// <summary>Where acts go to.</summary>
    public required string ActsAt { get; init; }

    /// <summary>What the practice engine has been through; null for a car in the shop.</summary>
    public string? Acts { get; init; }

    /// <summary>What stands on the engine.</summary>
    public EnginePlan Plan => Book.Plan;

    /// <summary>What to do next.</summary>
    public NextMove Next => Advice.Next;

    /// <summary>Whether the rods are off.</summary>
    public bool RodsOff => Book.Steps.LastOrDefault(s => s is RodsTakenOff or RodsPutBack) is RodsTakenOff;

    /// <summary>Whether a round is being read, so that nothing should be turned yet.</summary>
    public bool IsReading => Reading is { IsUnderWay: true };

    /// <summary>Puts a bench together.</summary>
    /// <param name="book">The balancing.</param>
    /// <param name="heldRpm">The speed shown, chosen by a person; null takes the advice's.</param>
    /// <param name="actsAt">Where acts go to.</param>
    /// <returns>The bench.</returns>
    public static BalanceBench Of(BalanceBook book, (double? HeldRpm, bool IsChosen) heldRpm, string actsAt)
    {
        var advice = BalanceAdvice.Of(book);
        return new BalanceBench
        {
            Book = book,
            Advice = advice,
            Now = BarrelsNow.Of(book, advice, heldRpm.IsChosen ? heldRpm.HeldRpm : Shown(advice)),
            Proof = MoveProof.Of(book),
            ActsAt = actsAt,
        };
    }

    /// <summary>The drawing.</summary>
    /// <param name="size">For a tablet or a phone.</param>
    /// <param name="address">Where a part leads.</param>
    /// <returns>The view.</returns>
    public EngineView Engine(PictureSize size, Func<string, string> address) => new()
    {
        Plan = Plan,
        Size = size,
        IdPrefix = size == PictureSize.Full ? "engine" : "engine-small",
        RodsOff = RodsOff,
        Mark = Next is { Adjuster: { } adjuster, Turns: not 0 } && !IsReading ? new EngineMark(adjuster.Key, Next.Turns) : null,
        Rings = [.. Now.Barrels.Select(Ring)],
        PartAddress = address,
    };

    /// <summary>The rounds of the speed in hand.</summary>
    /// <param name="size">For a tablet or a phone.</param>
    /// <returns>The view.</returns>
    public RoundsView Rounds(PictureSize size) => new([.. Shown().TakeLast(8).Select(Row)], "kg/h") { Size = size, IdPrefix = size == PictureSize.Full ? "rounds" : "rounds-small" };

    /// <summary>The banks; null of an engine with one, or before both were read.</summary>
    /// <returns>The view.</returns>
    public BankMeansView? Banks()
    {
        var banks = Plan.Barrels.GroupBy(b => b.Bank).OrderBy(g => g.Key).Select(g => (PlanWords.Bank(Plan, g.Key), Values: (IReadOnlyList<double>)[.. g.Select(b => Now.Barrels[b.Number - 1].Air).OfType<double>()])).ToList();
        return banks.Count < 2 || banks.Exists(b => b.Values.Count == 0) ? null : new BankMeansView(banks, 2 * (Now.HeldRpm is null ? Book.Limits.BankIdlePart : Book.Limits.BankHeldPart));
    }

    /// <summary>Mean, spread, limit and what a reading is good to, always together.</summary>
    /// <returns>Such as "Mean 4.0", "spread 0.7", "limit ±10 %", "good to ±0.1".</returns>
    public IReadOnlyList<string> Figures() => Now.Mean is not { } mean ? [] :
    [
        Line($"Mean {mean:0.0}"), Line($"spread {Now.Spread:0.0}"), $"limit ±{Tickover.Reports.Shown.Percent(Now.Limit / mean)} of mean", Line($"reading good to ±{Now.Band:0.0}"),
    ];

    /// <summary>The speed in words.</summary>
    public string Speed => Now.HeldRpm is { } rpm ? Line($"held at {rpm:#,0} rpm") : "idle";

    private static double? Shown(BalanceAdvice advice) => advice.Next is { Kind: NextKind.Turn or NextKind.Read } next ? next.HeldRpm : advice.Rounds.LastOrDefault(r => r.Mean > 0)?.Round.HeldRpm;

    private IEnumerable<RoundAccount> Shown() => Advice.Rounds.Where(r => r.Round.HeldRpm == Now.HeldRpm && r.Barrels.Any(b => b.Air is not null));

    private RingView Ring(BarrelStanding barrel) => new(barrel.Barrel)
    {
        Figure = barrel.Air is { } air ? air.ToString("0.0", CultureInfo.InvariantCulture) : "",
        DeviationPart = Now.Mean is null || barrel.Air is null ? null : barrel.DeviationPart,
        LimitPart = Now.Mean is null ? null : barrel.LimitPart,
        BandPart = Now.Mean is null || barrel.Air is null ? null : barrel.BandPart,
        Standing = Now.Mean is null ? RingStanding.NotRead : Of(barrel.Standing),
        IsHollow = barrel.IsHollow,
        IsNext = Reading?.Next == barrel.Barrel && (IsReading || Next.Kind == NextKind.Read),
    };

    private RoundRow Row(RoundAccount round) => new(
        round.Round.Number,
        round.Before.Length > 0 ? round.Before : round.Round.Moment == Workshop.Visits.Moment.AsFound ? "As found" : round.Round.Moment == Workshop.Visits.Moment.AsLeft ? "As left" : "Nothing moved",
        [.. round.Barrels.Where(b => b.Air is not null).Select(b => (b.Air!.Value, round.IsWhole ? Of(b.Standing) : RingStanding.Within))],
        round.Mean)
    {
        LimitPart = round.IsWhole ? round.Barrels[0].LimitPart : null,
        IsVoid = round.IsVoid,
    };

    private static RingStanding Of(Standing standing) => standing switch
    {
        Standing.Within => RingStanding.Within,
        Standing.Low => RingStanding.Low,
        Standing.High => RingStanding.High,
        Standing.CannotTell => RingStanding.CannotTell,
        _ => RingStanding.NotRead,
    };

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
