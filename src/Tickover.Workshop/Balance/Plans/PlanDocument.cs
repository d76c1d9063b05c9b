using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Tickover.Workshop.Balance.Plans;

/// <summary>Reads a plan of its own, for engines no car document describes yet: constant depression, motorcycles. JSON, format <c>tickover-plan-1</c>; docs/balance.md.</summary>
public static class PlanDocument
{
    /// <summary>What the document's format says.</summary>
    public const string Format = "tickover-plan-1";

    /// <summary>Most barrels a plan may have.</summary>
    public const int MostBarrels = 24;
    private const string Emulsion = "emulsion";
    private const string Air = "air";
    private static readonly JsonSerializerOptions Lenient = new(JsonSerializerDefaults.Web)
    {
        ReadCommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    };

    private static readonly Dictionary<string, PlanLayout> Layouts = new(StringComparer.OrdinalIgnoreCase)
    {
        ["two banks"] = PlanLayout.TwoBanks,
        ["in line"] = PlanLayout.InLine,
        ["constant depression"] = PlanLayout.ConstantDepression,
        ["motorcycle four"] = PlanLayout.MotorcycleFour,
    };

    /// <summary>Reads a document; never throws for what somebody typed.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The plan, or what is wrong and what to do.</returns>
    public static (EnginePlan? Plan, IReadOnlyList<string> Faults) Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        Written? written;
        try
        {
            written = JsonSerializer.Deserialize<Written>(json, Lenient);
        }
        catch (JsonException fault)
        {
            return (null, [string.Create(CultureInfo.InvariantCulture, $"Line {(fault.LineNumber ?? 0) + 1}, {fault.Path ?? "$"}: this is no plan. Check the names, commas, quotes and brackets there against docs/balance.md.")]);
        }

        List<string> faults = [.. Faults(written)];
        return faults.Count > 0 ? (null, faults) : (Make(written!), faults);
    }

    private static IEnumerable<string> Faults(Written? written)
    {
        if (written is null || !string.Equals(written.Format, Format, StringComparison.Ordinal))
        {
            return [$"format: a plan begins with \"format\": \"{Format}\"."];
        }

        return [.. Sizes(written), .. Carburettors(written)];
    }

    private static IEnumerable<string> Sizes(Written written)
    {
        if (string.IsNullOrWhiteSpace(written.Name))
        {
            yield return "name: what the car is called here.";
        }

        if (!Layouts.ContainsKey(written.Layout ?? ""))
        {
            yield return $"layout: one of {string.Join(", ", Layouts.Keys.Select(k => $"\"{k}\""))}.";
        }

        foreach (var (name, value, low, high, unit) in new[]
        {
            ("cylinders", written.Cylinders, 1.0, MostBarrels, ""), ("sweptVolume", written.SweptVolume, 20.0, 2000.0, " cm³ a cylinder"),
            ("throttleBore", written.ThrottleBore, 15.0, 80.0, " mm"), ("closedAngle", written.ClosedAngle, 0.0, 25.0, "°"), ("idleSpeed", written.IdleSpeed, 300.0, 2500.0, " rpm"),
        })
        {
            if (!(value >= low && value <= high))
            {
                yield return string.Create(CultureInfo.InvariantCulture, $"{name}: {value} is not from {low} to {high}{unit}. Mend it.");
            }
        }
    }

    private static IEnumerable<string> Carburettors(Written written)
    {
        var all = written.Carburettors ?? [];
        if (all.Count == 0 || all.Any(c => c.Barrels is null or { Count: 0 }))
        {
            yield return "carburettors: at least one, each with \"barrels\", a list of the cylinders each barrel feeds, such as [[1, 2]].";
            yield break;
        }

        if (!FeedsRight(all, written.Cylinders))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"carburettors: every barrel feeds at least one of the cylinders 1 to {written.Cylinders}; there are at most {MostBarrels} barrels.");
        }

        if (all.Any(c => c.Bank is < 1 or > 2))
        {
            yield return "carburettors: bank is 1 or 2.";
        }

        if (string.Equals(written.Layout, "motorcycle four", StringComparison.OrdinalIgnoreCase) && all.Count != 4)
        {
            yield return "carburettors: a motorcycle four has four.";
        }

        if (written.MixtureScrews is not (null or Emulsion or Air))
        {
            yield return $"mixtureScrews: \"{Emulsion}\" where out is richer, \"{Air}\" where out is leaner.";
        }

        if (written.Reference is { } reference && (reference < 1 || reference > all.Count))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"reference: carburettor {reference} does not exist; there are {all.Count}.");
        }
    }

    private static bool FeedsRight(IReadOnlyList<WrittenCarburettor> all, double cylinders)
    {
        var fed = all.SelectMany(c => c.Barrels!).ToList();
        return fed.Count <= MostBarrels && fed.TrueForAll(b => b.Count > 0 && b.TrueForAll(c => c >= 1 && c <= cylinders));
    }

    private static EnginePlan Make(Written written)
    {
        var (carburettors, barrels) = (new List<PlanCarburettor>(), new List<PlanBarrel>());
        foreach (var one in written.Carburettors!)
        {
            var number = carburettors.Count + 1;
            var mine = one.Barrels!.Select((feeds, i) => new PlanBarrel(barrels.Count + i + 1, number, one.Bank, feeds)).ToList();
            carburettors.Add(new PlanCarburettor(number, string.IsNullOrWhiteSpace(one.Name) ? number.ToString(CultureInfo.InvariantCulture) : one.Name.Trim(), one.Bank, [.. mine.Select(b => b.Number)]));
            barrels.AddRange(mine);
        }

        var layout = Layouts[written.Layout!];
        var plan = new EnginePlan
        {
            Name = written.Name!.Trim(),
            Layout = layout,
            Cylinders = (int)written.Cylinders,
            SweptCubicCentimetres = written.SweptVolume,
            ThrottleBoreMillimetres = written.ThrottleBore,
            ClosedAngleDegrees = written.ClosedAngle,
            IdleRpm = written.IdleSpeed,
            Carburettors = carburettors,
            Barrels = barrels,
            Reference = written.Reference ?? layout switch { PlanLayout.InLine => (carburettors.Count + 1) / 2, PlanLayout.MotorcycleFour => 2, _ => null },
            HasAirScrews = written.MixtureScrews is Air,
            Adjusters = [],
        };
        return plan with { Adjusters = AdjusterList.For(plan, written.Bypass) };
    }

    private sealed record Written(
        string? Format, string? Name, string? Layout, double Cylinders, double SweptVolume, double ThrottleBore, double ClosedAngle, double IdleSpeed, bool Bypass, string? MixtureScrews, int? Reference, IReadOnlyList<WrittenCarburettor>? Carburettors);

    private sealed record WrittenCarburettor(string? Name, IReadOnlyList<List<int>>? Barrels, int Bank = 1);
}
