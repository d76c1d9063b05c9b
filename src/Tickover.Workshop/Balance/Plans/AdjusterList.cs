using System.Globalization;

namespace Tickover.Workshop.Balance.Plans;

/// <summary>What there is to turn on each of the four layouts (reference: adjusters and what each does; common practice).</summary>
internal static class AdjusterList
{
    private const int Eighths = 8;
    private const int Flats = 6;
    private const int HalfFlats = 12;
    private const double StopTravel = 4;
    private const double MixtureTravel = 6;
    private const double BypassTravel = 3;
    private const double RodTravel = 6;
    private const double JetNutTravel = 4;

    /// <summary>The adjusters of a plan.</summary>
    /// <param name="plan">The plan, as yet without adjusters.</param>
    /// <param name="bypasses">Whether barrels have by-pass screws.</param>
    /// <returns>In the order work goes: barrel, carburettor, bank, banks, mixture.</returns>
    public static IReadOnlyList<Adjuster> For(EnginePlan plan, bool bypasses) =>
    [
        .. bypasses ? plan.Barrels.Select(b => Bypass(plan, b)) : [],
        .. Stops(plan),
        .. Between(plan),
        .. Mixture(plan),
    ];

    /// <summary>Which barrel of its carburettor one is, such as ", rear barrel"; nothing where it is the only one.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="barrel">The barrel.</param>
    /// <returns>The words.</returns>
    private static string Which(EnginePlan plan, PlanBarrel barrel)
    {
        var barrels = plan.Carburettors[barrel.Carburettor - 1].Barrels;
        return barrels.Count switch
        {
            1 => "",
            2 => barrels[0] == barrel.Number ? ", front barrel" : ", rear barrel",
            _ => string.Create(CultureInfo.InvariantCulture, $", barrel {barrel.Number}"),
        };
    }

    private static Adjuster Bypass(EnginePlan plan, PlanBarrel barrel) => Make(
        Invariant($"bypass:{barrel.Number}"), AdjusterKind.BypassScrew, plan.Carburettors[barrel.Carburettor - 1].Words + Which(plan, barrel), "by-pass screw", [barrel.Number], ("out", "in"), Eighths, BypassTravel);

    private static IEnumerable<Adjuster> Stops(EnginePlan plan) => plan.Layout switch
    {
        PlanLayout.InLine => [Stop(plan.Carburettors[(plan.Reference ?? 1) - 1], AllBarrels(plan))],
        PlanLayout.MotorcycleFour => [Make("master", AdjusterKind.MasterStop, "Between the carburettors", "idle speed knob", AllBarrels(plan), ("in", "out"), Eighths, StopTravel)],
        _ => plan.Carburettors.Select(c => Stop(c, c.Barrels)),
    };

    private static Adjuster Stop(PlanCarburettor carburettor, IReadOnlyList<int> barrels) =>
        Make(Invariant($"stop:{carburettor.Number}"), AdjusterKind.StopScrew, carburettor.Words, "stop screw", barrels, ("in", "out"), Eighths, StopTravel);

    private static IEnumerable<Adjuster> Between(EnginePlan plan) => plan.Layout switch
    {
        PlanLayout.TwoBanks => [.. Rods(plan), .. BankRod(plan)],
        PlanLayout.InLine => plan.Carburettors.Where(c => c.Number != plan.Reference).Select(c => Coupling(plan, c)),
        PlanLayout.ConstantDepression => [Make("clamp", AdjusterKind.CouplingScrew, "Between the carburettors", "spindle clamp", plan.Carburettors[^1].Barrels, ("open", "shut"), Eighths, 1)],
        _ => Links(plan),
    };

    // a rod moves its carburettor and all that hang on it further back
    private static IEnumerable<Adjuster> Rods(EnginePlan plan) =>
        from bank in Enumerable.Range(1, plan.Banks)
        let chain = plan.Carburettors.Where(c => c.Bank == bank).ToList()
        from place in Enumerable.Range(1, Math.Max(chain.Count - 1, 0))
        select Make(
            Invariant($"rod:{chain[place].Number}"), AdjusterKind.LinkRod, $"Between {Lower(chain[place - 1].Words)} and {Lower(chain[place].Words)}", "rod", [.. chain.Skip(place).SelectMany(c => c.Barrels)], ("longer", "shorter"), HalfFlats, RodTravel);

    private static IEnumerable<Adjuster> BankRod(EnginePlan plan) => plan.Banks < 2
        ? []
        : [Make("bankrod", AdjusterKind.BankRod, "Between the banks", "rod", [.. plan.Barrels.Where(b => b.Bank == plan.Banks).Select(b => b.Number)], ("longer", "shorter"), HalfFlats, RodTravel)];

    // beyond the reference each coupling carries what lies further out
    private static Adjuster Coupling(EnginePlan plan, PlanCarburettor carburettor)
    {
        var reference = plan.Reference ?? 1;
        var outer = plan.Carburettors.Where(c => carburettor.Number < reference ? c.Number <= carburettor.Number : c.Number >= carburettor.Number);
        var inner = plan.Carburettors[carburettor.Number < reference ? carburettor.Number : carburettor.Number - 2];
        return Make(
            Invariant($"coupling:{carburettor.Number}"), AdjusterKind.CouplingScrew, $"Between {Lower(inner.Words)} and {Lower(carburettor.Words)}", "coupling screw", [.. outer.SelectMany(c => c.Barrels)], ("in", "out"), Eighths, StopTravel);
    }

    // three screws: the outer pairs, then the two pairs against each other; a moved carburettor is never the fixed one
    private static IEnumerable<Adjuster> Links(EnginePlan plan)
    {
        var fixedOne = plan.Reference ?? 2;
        var (sameSide, otherSide) = fixedOne <= 2 ? (new[] { 1, 2 }, new[] { 3, 4 }) : ([3, 4], [1, 2]);
        var partner = sameSide.Single(n => n != fixedOne);
        var follower = fixedOne <= 2 ? 4 : 1;
        yield return Link(plan, partner, Invariant($"Between carburettors {sameSide[0]} and {sameSide[1]}"), [partner]);
        yield return Link(plan, follower, Invariant($"Between carburettors {otherSide[0]} and {otherSide[1]}"), [follower]);
        yield return Link(plan, otherSide.Single(n => n != follower), "Between the two pairs", otherSide);
    }

    private static Adjuster Link(EnginePlan plan, int key, string where, IReadOnlyList<int> carburettors) => Make(
        Invariant($"link:{key}"), AdjusterKind.CouplingScrew, where, "link screw", [.. carburettors.SelectMany(n => plan.Carburettors[n - 1].Barrels)], ("in", "out"), Eighths, StopTravel);

    private static IEnumerable<Adjuster> Mixture(EnginePlan plan) => plan.Layout == PlanLayout.ConstantDepression
        ? plan.Carburettors.Select(c => Make(Invariant($"jet:{c.Number}"), AdjusterKind.JetNut, c.Words, "jet nut", c.Barrels, ("down", "up"), Flats, JetNutTravel))
        : plan.Barrels.Select(b => Make(Invariant($"mixture:{b.Number}"), AdjusterKind.MixtureScrew, plan.Carburettors[b.Carburettor - 1].Words + Which(plan, b), plan.HasAirScrews ? "idle air screw" : "mixture screw", [b.Number], plan.HasAirScrews ? ("in", "out") : ("out", "in"), Eighths, MixtureTravel));

    private static IReadOnlyList<int> AllBarrels(EnginePlan plan) => [.. plan.Barrels.Select(b => b.Number)];

    private static string Lower(string words) => char.ToLowerInvariant(words[0]) + words[1..];

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static Adjuster Make(string key, AdjusterKind kind, string where, string thing, IReadOnlyList<int> barrels, (string More, string Less) way, int steps, double travel) => new()
    {
        Key = key,
        Kind = kind,
        Where = where,
        Thing = thing,
        Barrels = barrels,
        More = way.More,
        Less = way.Less,
        StepsATurn = steps,
        TravelTurns = travel,
    };
}
