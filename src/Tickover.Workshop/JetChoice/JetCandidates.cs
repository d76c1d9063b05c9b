using Tickover.Workshop.Cars;

namespace Tickover.Workshop.JetChoice;

/// <summary>The sizes that are tried.</summary>
internal sealed class JetCandidates
{
    private readonly Dictionary<string, IReadOnlyList<double>> _sizes;

    private JetCandidates(Dictionary<string, IReadOnlyList<double>> sizes, IReadOnlyList<EmulsionTubeChoice?> tubes) => (_sizes, Tubes) = (sizes, tubes);

    /// <summary>Tubes tried; null stands for the one fitted.</summary>
    internal IReadOnlyList<EmulsionTubeChoice?> Tubes { get; }

    internal IReadOnlyList<double> this[JetPart part] => _sizes[part.Name];

    /// <summary>Sets to a choke and a tube.</summary>
    internal long PerBody => JetParts.All.Where(p => p != JetParts.Choke).Aggregate(1L, (n, p) => n * _sizes[p.Name].Count);

    /// <summary>All that stands in any of several lists: what a surface has to span that serves them all.</summary>
    internal static JetCandidates Union(IReadOnlyList<JetCandidates> pools) => new(
        JetParts.All.ToDictionary(p => p.Name, IReadOnlyList<double> (p) => [.. pools.SelectMany(c => c[p]).Distinct().Order()], StringComparer.Ordinal),
        [.. pools.SelectMany(c => c.Tubes).Distinct()]);

    /// <summary>Whether a choke with a tube stands in the list.</summary>
    internal bool Holds(double choke, EmulsionTubeChoice? tube) => this[JetParts.Choke].Contains(choke) && Tubes.Contains(tube);

    /// <summary>What may be fitted: from the shelf, or from the trade's series; what is fitted now is always among it.</summary>
    internal static JetCandidates Of(Car car, JetShelf? shelf)
    {
        var sizes = new Dictionary<string, IReadOnlyList<double>>(StringComparer.Ordinal);
        foreach (var part in JetParts.All)
        {
            var fitted = part.Fitted(car);
            var tried = part.IsSetting || shelf is null ? Series(part, fitted) : shelf.Enough(part, car.Barrels.Count).Where(s => Near(part, s, fitted));
            sizes.Add(part.Name, [.. tried.Append(fitted).Distinct().Where(s => Fits(part, s, car)).Order()]);
        }

        var tubes = shelf?.Tubes.Where(t => t.Count >= car.Barrels.Count && !string.Equals(t.Code, car.Barrels[0].EmulsionTube, StringComparison.Ordinal)) ?? [];
        return new JetCandidates(sizes, [null, .. tubes]);
    }

    private static bool Near(JetPart part, double size, double fitted) => Math.Abs(size - fitted) <= part.Reach * part.Series.Step + 1e-9;

    private static IEnumerable<double> Series(JetPart part, double fitted)
    {
        // A setting is moved from where it stands; a part is one of those sold.
        var first = part.IsSetting ? fitted - part.Reach * part.Series.Step : Math.Ceiling((fitted - part.Reach * part.Series.Step) / part.Series.Step - 1e-9) * part.Series.Step;
        for (var k = 0; k <= 2 * part.Reach; k++)
        {
            var size = Math.Round(first + k * part.Series.Step, 4);
            if (size >= part.Series.Smallest - 1e-9 && size <= part.Series.Largest + 1e-9)
            {
                yield return size;
            }
        }
    }

    // A choke has to be smaller than its bore.
    private static bool Fits(JetPart part, double size, Car car) =>
        part != JetParts.Choke || size * part.ToSi < 0.95 * car.Barrels.Min(b => b.Figures.Si("barrel.throttleBore")) || size == part.Fitted(car);
}
