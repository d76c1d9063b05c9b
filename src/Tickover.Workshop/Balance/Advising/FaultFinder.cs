using Tickover.Physics.Balancing;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>Ranks what may be wrong by the evidence of all readings side by side: one fault, or any two.</summary>
internal sealed class FaultFinder
{
    private const double EachFault = 0.05;                  // chance of a kind of fault on a car that comes in; assumed, shared over its places
    private const double RodLever = 55;                     // mm; common practice
    private const double OrdinaryRod = 0.45;                // degrees a rod may be off without anybody having blundered (assumed)
    private const int Pairs = 14;                           // singles whose pairs are weighed
    private const double Least = 0.005;
    private const int Most = 5;

    private readonly BalanceBook _book;
    private readonly IReadOnlyList<FaultEntry> _entries;
    private readonly InfluenceModel _model;

    /// <summary>Begins.</summary>
    /// <param name="book">The book.</param>
    /// <param name="model">What was learned of turns.</param>
    /// <param name="meter">What the meter has shown to be good to.</param>
    public FaultFinder(BalanceBook book, InfluenceModel model, MeterSettings meter)
    {
        (_book, _model) = (book, model);
        _entries = FaultEntries.Of(book, meter);
    }

    /// <summary>The causes.</summary>
    /// <returns>Likeliest first, and the chance that only screws want turning.</returns>
    public (IReadOnlyList<(FaultPlace Fault, double Probability)> Causes, double OnlyScrews) Rank()
    {
        var (chances, none) = _entries.Count > 0 ? Weigh() : ([], 1);
        foreach (var (fault, chance) in Turns())
        {
            chances[fault] = Math.Max(chance, chances.GetValueOrDefault(fault));
            none = Math.Min(none, 1 - chance);
        }

        foreach (var done in _book.Steps.OfType<CheckedFor>())
        {
            chances.Remove(done.Fault);
        }

        Looks(chances);
        PutRight().ToList().ForEach(f => chances.Remove(f));
        return ([.. chances.Where(c => c.Value >= Least).OrderByDescending(c => c.Value).Take(Most).Select(c => (c.Key, c.Value))], none);
    }

    private (Dictionary<FaultPlace, double> Chances, double None) Weigh()
    {
        var shapes = new FaultShapes(_book.Plan, _entries);
        var evidence = new FaultEvidence([.. _entries.Select(e => e.Value)], [.. _entries.Select(e => Square(e.Deviation) + Square(shapes.Roughness(e)))], shapes.Ordinary());
        var ruledOut = _book.Steps.OfType<CheckedFor>().Select(c => c.Fault).ToHashSet();
        var all = shapes.All().Where(f => !ruledOut.Contains(f.Fault) && f.Pattern.Shapes.Any(s => s.Any(v => v != 0))).ToList();
        var kinds = all.GroupBy(f => f.Fault.Fault).ToDictionary(g => g.Key, g => g.Count());
        double Prior(FaultPlace fault) => Math.Log(EachFault / kinds[fault.Fault]);
        var ends = new List<(FaultPlace[] Faults, double Log)> { ([], evidence.Log([])) };
        var singles = all.ConvertAll(f => (f.Fault, f.Pattern, Log: evidence.Log([f.Pattern]) + Prior(f.Fault)));
        ends.AddRange(singles.Select(s => (new[] { s.Fault }, s.Log)));
        var likely = singles.OrderByDescending(s => s.Log).Take(Pairs).ToList();
        foreach (var a in likely)
        {
            ends.AddRange(all.Where(b => b.Fault != a.Fault && (likely.TrueForAll(l => l.Pattern != b.Pattern) || string.CompareOrdinal(a.Fault.ToString(), b.Fault.ToString()) < 0))
                .Select(b => (new[] { a.Fault, b.Fault }, evidence.Log([a.Pattern, b.Pattern]) + Prior(a.Fault) + Prior(b.Fault))));
        }

        var top = ends.Max(e => e.Log);
        var total = ends.Sum(e => Math.Exp(e.Log - top));
        var chances = new Dictionary<FaultPlace, double>();
        foreach (var (faults, log) in ends)
        {
            foreach (var fault in faults)
            {
                chances[fault] = chances.GetValueOrDefault(fault) + (Math.Exp(log - top) / total);
            }
        }

        return (chances, Math.Exp(ends[0].Log - top) / total);
    }

    private static double Square(double value) => value * value;

    // a screw that did nothing: seized, or, with the rods on, its plate held off the stop
    private IEnumerable<(FaultPlace Fault, double Chance)> Turns()
    {
        foreach (var outcome in _model.Outcomes.Where(o => o.DidNothing))
        {
            var held = outcome.Adjuster.Kind == AdjusterKind.StopScrew && !outcome.RodsOff;
            yield return (new FaultPlace(BalanceFault.DeadScrew, 0, outcome.Adjuster.Key), held ? 0.25 : 0.9);
            if (held && _book.Plan.Barrels.FirstOrDefault(b => b.Number == outcome.Adjuster.Barrels[0]) is { } barrel)
            {
                yield return (new FaultPlace(BalanceFault.StopNotTouching, barrel.Carburettor), 0.7);
            }
        }
    }

    // what was seen with the eye outweighs what readings hint at
    private void Looks(Dictionary<FaultPlace, double> chances)
    {
        foreach (var look in _book.Steps.OfType<LookedAt>().GroupBy(l => l.What, StringComparer.OrdinalIgnoreCase).Select(g => g.First()))
        {
            if (_book.Plan.Find(look.What) is not { } seen)
            {
                continue;
            }

            var carburettor = _book.Plan.Barrels[seen.Barrels[0] - 1].Carburettor;
            if (seen.Kind == AdjusterKind.StopScrew)
            {
                Seen(chances, new FaultPlace(BalanceFault.StopNotTouching, carburettor), (look.Gap - 0.13) / 0.03);
            }
            else
            {
                var degrees = Math.Abs(look.Gap) / RodLever * 180 / Math.PI;
                Seen(chances, new FaultPlace(look.Gap > 0 ? BalanceFault.StopNotTouching : BalanceFault.RodLength, carburettor), (degrees - OrdinaryRod) / 0.08);
            }
        }
    }

    // a rod that was turned since the readings showed it is no longer what is wrong
    private IEnumerable<FaultPlace> PutRight() =>
        from turned in _book.Steps.OfType<Turned>()
        let rod = _book.Plan.Find(turned.Adjuster)
        where rod?.Kind is AdjusterKind.LinkRod or AdjusterKind.BankRod || (rod?.Kind == AdjusterKind.CouplingScrew && _book.Plan.Layout == PlanLayout.ConstantDepression)
        from fault in (BalanceFault[])[BalanceFault.StopNotTouching, BalanceFault.RodLength]
        select new FaultPlace(fault, _book.Plan.Barrels[rod.Barrels[0] - 1].Carburettor);

    private static void Seen(Dictionary<FaultPlace, double> chances, FaultPlace fault, double odds) => chances[fault] = 0.95 / (1 + Math.Exp(-odds));
}
