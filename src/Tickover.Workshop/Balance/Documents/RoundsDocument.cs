using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Balance.Documents;

/// <summary>Reads a balancing written as JSON, format <c>tickover-rounds-1</c>; docs/balance.md.</summary>
public static class RoundsDocument
{
    /// <summary>What the document's format says.</summary>
    public const string Format = "tickover-rounds-1";

    private static readonly JsonSerializerOptions Lenient = new(JsonSerializerDefaults.Web)
    {
        ReadCommentHandling = JsonCommentHandling.Skip,
        AllowTrailingCommas = true,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    };

    /// <summary>Reads a document; never throws for what somebody typed.</summary>
    /// <param name="json">The text.</param>
    /// <param name="beside">Reads a file named in the document: its text, or null where there is none.</param>
    /// <returns>The book, or what is wrong, where, and what to do.</returns>
    public static (BalanceBook? Book, IReadOnlyList<string> Faults) Read(string json, Func<string, string?> beside)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(beside);
        WrittenRounds? written;
        try
        {
            written = JsonSerializer.Deserialize<WrittenRounds>(json, Lenient);
        }
        catch (JsonException fault)
        {
            return (null, [Line($"Line {(fault.LineNumber ?? 0) + 1}, {fault.Path ?? "$"}: this is no list of rounds. Check the names, commas, quotes and brackets there against docs/balance.md; a figure is written 4.1, with a point.")]);
        }

        if (written is null || !string.Equals(written.Format, Format, StringComparison.Ordinal))
        {
            return (null, [$"format: a list of rounds begins with \"format\": \"{Format}\"."]);
        }

        var (plan, faults) = Engine(written.Engine, beside);
        if (plan is null)
        {
            return (null, faults);
        }

        var steps = new StepReader(plan);
        var read = (written.Steps ?? []).Select((s, i) => steps.Read(s, i)).ToList();
        faults = [.. Instruments(written), .. steps.Faults];
        return faults.Count > 0
            ? (null, faults)
            : (new BalanceBook { Plan = plan, Steps = [.. read.OfType<BalanceStep>()], Meter = Meter(written) }, []);
    }

    /// <summary>Reads a plan from the text of a car document or of a plan.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The plan, or what is wrong.</returns>
    public static (EnginePlan? Plan, IReadOnlyList<string> Faults) Plan(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        if (json.Contains(PlanDocument.Format, StringComparison.Ordinal))
        {
            return PlanDocument.Read(json);
        }

        var car = CarDocument.Read(json);
        return car.Car is null ? (null, [.. car.Faults.Select(f => $"{f.Path}: {f.Problem}. {f.WhatToDo}")]) : (PlanOfCar.Of(car.Car), []);
    }

    private static (EnginePlan? Plan, IReadOnlyList<string> Faults) Engine(JsonElement? engine, Func<string, string?> beside)
    {
        const string What = "engine: the name of a car document or plan beside this file, such as \"osprey-v8.car.json\", or the plan itself.";
        switch (engine?.ValueKind)
        {
            case JsonValueKind.Object:
                return Plan(engine.Value.GetRawText());
            case JsonValueKind.String when beside(engine.Value.GetString()!) is { } text:
                var (plan, faults) = Plan(text);
                return (plan, [.. faults.Select(f => $"{engine.Value.GetString()}: {f}")]);
            case JsonValueKind.String:
                return (null, [$"engine: there is no file \"{engine.Value.GetString()}\" beside this one. Put it there or mend the name."]);
            default:
                return (null, [What]);
        }
    }

    private static IEnumerable<string> Instruments(WrittenRounds written)
    {
        foreach (var gauge in (written.Gauges ?? []).Where(g => Gauge(g) is null))
        {
            yield return $"gauges: \"{gauge}\" is nothing that is read here. There are vacuum, lambda, header, speed and gas.";
        }

        if (written.Meter is { } meter && !(meter.Air is null or (> 0 and < 10) && meter.Part is null or (>= 0 and < 0.5)))
        {
            yield return "meter: what it is good to, one standard deviation: air in kg/h, such as 0.1, and part of the reading, such as 0.02.";
        }
    }

    private static MeterSettings Meter(WrittenRounds written)
    {
        var meter = new MeterSettings();
        return meter with
        {
            Available = (written.Gauges ?? []).Aggregate(ReadKinds.Air, (kinds, gauge) => kinds | (Gauge(gauge) ?? ReadKinds.None)),
            AirKilogramsPerHour = written.Meter?.Air ?? meter.AirKilogramsPerHour,
            AirPart = written.Meter?.Part ?? meter.AirPart,
        };
    }

    private static ReadKinds? Gauge(string gauge) => gauge?.ToUpperInvariant() switch
    {
        "AIR" => ReadKinds.Air,
        "VACUUM" => ReadKinds.Vacuum,
        "LAMBDA" => ReadKinds.Lambda,
        "HEADER" => ReadKinds.Header,
        "SPEED" => ReadKinds.Speed,
        "GAS" => ReadKinds.BankGas,
        _ => null,
    };

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
