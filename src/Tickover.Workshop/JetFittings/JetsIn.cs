using Tickover.Workshop.Cars;
using Tickover.Workshop.JetChoice;

namespace Tickover.Workshop.JetFittings;

/// <summary>The jets, chokes and settings in a car, as words: what a choice may change.</summary>
public sealed class JetsIn
{
    /// <summary>What stands where a size is not in the document.</summary>
    public const string Unknown = "not noted";

    private JetsIn(IReadOnlyList<(string Label, string Size)> parts) => Parts = parts;

    /// <summary>Each part with its size; where barrels differ, all sizes in the order of the barrels.</summary>
    public IReadOnlyList<(string Label, string Size)> Parts { get; }

    /// <summary>Reads a car document.</summary>
    /// <param name="document">The document.</param>
    /// <returns>The jets, or null where it cannot be read.</returns>
    public static JetsIn? Of(string document) => CarDocument.Read(document).Car is { } car ? Of(car) : null;

    /// <summary>The jets of a car.</summary>
    /// <param name="car">The car.</param>
    /// <returns>The jets.</returns>
    public static JetsIn Of(Car car)
    {
        ArgumentNullException.ThrowIfNull(car);
        return new(
        [
            .. JetParts.All.Select(p => (p == JetParts.Screw ? "Mixture screw, turns out" : p.Label, Joined(car.Barrels.Select(b => p.Text(Math.Round(b.Figures.Si(p.Key) / p.ToSi, 4)))))),
            ("Emulsion tube", Joined(car.Barrels.Select(b => b.EmulsionTube ?? Unknown))),
        ]);
    }

    /// <summary>Whether the same jets are in.</summary>
    /// <param name="other">The other jets; null is none that are known.</param>
    /// <returns>True where every part has the same size.</returns>
    public bool Same(JetsIn? other) => other is not null && Parts.SequenceEqual(other.Parts);

    private static string Joined(IEnumerable<string> sizes)
    {
        var all = sizes.ToList();
        return all.TrueForAll(s => string.Equals(s, all[0], StringComparison.Ordinal)) ? all[0] : string.Join('/', all);
    }
}
