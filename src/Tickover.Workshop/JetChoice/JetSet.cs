using Tickover.Workshop.Cars;

namespace Tickover.Workshop.JetChoice;

/// <summary>A set of sizes for all barrels.</summary>
/// <param name="Sizes">Size of each part, in the order of <see cref="JetParts.All"/>.</param>
/// <param name="Tube">Emulsion tube; null to leave the one fitted.</param>
internal sealed record JetSet(IReadOnlyList<double> Sizes, EmulsionTubeChoice? Tube)
{
    /// <summary>What tells it from another set.</summary>
    internal string Key => string.Join(' ', Sizes) + " " + Tube?.Code;

    internal static JetSet Fitted(Car car) => new([.. JetParts.All.Select(p => p.Fitted(car))], null);

    /// <summary>The car with the set; null where its document refuses it.</summary>
    internal Car? On(Car car)
    {
        var fitted = Fitted(car);
        var changes = JetParts.All.Select((p, i) => (Part: p, Size: Sizes[i], Was: fitted.Sizes[i])).Where(c => c.Size != c.Was)
            .Select(c => KeyValuePair.Create(c.Part.Key, c.Part.Text(c.Size))).ToList();
        if (Tube is not null)
        {
            changes.Add(KeyValuePair.Create("barrel.emulsionTube", Tube.Code));
            changes.Add(KeyValuePair.Create("barrel.emulsionHoles", string.Join("; ", Tube.Holes)));
        }

        return changes.Count == 0 ? car : CarDocument.Change(car, changes).Car;
    }

    internal JetSet With(JetPart part, double size) => this with { Sizes = [.. Sizes.Select((s, i) => JetParts.All[i] == part ? size : s)] };
}
