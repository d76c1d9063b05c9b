using System.Globalization;
using System.Text.Json;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Balance.Plans;

/// <summary>The plan of an engine as its car document describes it.</summary>
public static class PlanOfCar
{
    private const double IdleRpm = 900;
    private const double CubicCentimetresPerCubicMetre = 1e6;
    private const double MillimetresPerMetre = 1000;

    /// <summary>Makes the plan.</summary>
    /// <param name="car">The car: fixed-choke carburettors, each barrel feeding a cylinder or a shared manifold.</param>
    /// <returns>Two banks, or carburettors in line with the middle one as reference; by-pass screws on every barrel of the former (common practice).</returns>
    public static EnginePlan Of(Car car)
    {
        ArgumentNullException.ThrowIfNull(car);
        var names = Names(car.Document);
        var barrels = car.Barrels.Select(b => new PlanBarrel(b.Number, b.Carburettor, car.Banks[b.Cylinders[0] - 1], b.Cylinders)).ToList();
        var carburettors = barrels.GroupBy(b => b.Carburettor).OrderBy(g => g.Key)
            .Select(g => new PlanCarburettor(g.Key, g.Key <= names.Count && names[g.Key - 1].Length > 0 ? names[g.Key - 1] : g.Key.ToString(CultureInfo.InvariantCulture), g.First().Bank, [.. g.Select(b => b.Number)])).ToList();
        var banks = carburettors.Max(c => c.Bank);
        var (bore, stroke) = (car.Engine.Si("engine.bore"), car.Engine.Si("engine.stroke"));
        var plan = new EnginePlan
        {
            Name = car.Name,
            Layout = banks > 1 ? PlanLayout.TwoBanks : PlanLayout.InLine,
            Cylinders = car.CylinderCount,
            SweptCubicCentimetres = 0.25 * Math.PI * bore * bore * stroke * CubicCentimetresPerCubicMetre,
            ThrottleBoreMillimetres = car.Barrels[0].Figures.Si("barrel.throttleBore") * MillimetresPerMetre,
            ClosedAngleDegrees = car.Barrels[0].Figures.Si("barrel.closedAngle") * 180 / Math.PI,
            IdleRpm = IdleRpm,
            Carburettors = carburettors,
            Barrels = barrels,
            Reference = banks > 1 ? null : (carburettors.Count + 1) / 2,
            Adjusters = [],
        };
        return plan with { Adjusters = AdjusterList.For(plan, bypasses: true) };
    }

    private static List<string> Names(string document)
    {
        using var read = JsonDocument.Parse(document, new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
        return read.RootElement.TryGetProperty("carburettors", out var all) && all.ValueKind is JsonValueKind.Array
            ? [.. all.EnumerateArray().Select(c => c.TryGetProperty("name", out var name) && name.ValueKind is JsonValueKind.String ? name.GetString()! : "")]
            : [];
    }
}
