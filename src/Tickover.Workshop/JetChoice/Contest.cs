namespace Tickover.Workshop.JetChoice;

/// <summary>The cheapest set seen of each number of parts changed.</summary>
internal sealed class Contest
{
    private const int Most = 8;
    private readonly (double Cost, JetSet? Set)[] _best = new (double, JetSet?)[Most + 1];

    internal Contest() => Array.Fill(_best, (double.PositiveInfinity, null));

    /// <summary>The cheapest of all.</summary>
    internal (double Cost, JetSet? Set) Best => _best.MinBy(b => b.Cost);

    /// <summary>The cheapest with no more than a number of parts changed.</summary>
    internal (double Cost, JetSet? Set) WithAtMost(int changed) => _best.Take(changed + 1).MinBy(b => b.Cost);

    internal void Offer(int changed, double cost, JetSet set, double idle, double bleed, double screw)
    {
        if (cost < _best[changed].Cost)
        {
            _best[changed] = (cost, set.With(JetParts.IdleJet, idle).With(JetParts.IdleBleed, bleed).With(JetParts.Screw, screw));
        }
    }

    internal void Take(Contest other)
    {
        for (var i = 0; i <= Most; i++)
        {
            if (other._best[i].Cost < _best[i].Cost)
            {
                _best[i] = other._best[i];
            }
        }
    }
}
