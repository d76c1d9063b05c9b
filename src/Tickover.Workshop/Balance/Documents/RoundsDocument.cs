using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Visits;

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

    private static readonly Dictionary<string, Moment> Moments = new(StringComparer.OrdinalIgnoreCase)
    {
        ["as found"] = Moment.AsFound,
        ["working"] = Moment.Working,
        ["as left"] = Moment.AsLeft,
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
            return (null, [Line($"Line {(fault.LineNumber ?? 0) + 1}, {fault.Path ?? "$"}: this is no list of rounds. Check the names, commas, quotes and brackets there against docs/balance.md.")]);
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
        return steps.Faults.Count > 0
            ? (null, steps.Faults)
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

    private static MeterSettings Meter(WrittenRounds written)
    {
        var meter = new MeterSettings();
        var kinds = ReadKinds.Air;
        foreach (var gauge in written.Gauges ?? [])
        {
            kinds |= Enum.TryParse<ReadKinds>(gauge, ignoreCase: true, out var kind) ? kind : ReadKinds.None;
        }

        return meter with { Available = kinds, AirKilogramsPerHour = written.Meter?.Air ?? meter.AirKilogramsPerHour, AirPart = written.Meter?.Part ?? meter.AirPart };
    }

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private sealed class StepReader(EnginePlan plan)
    {
        private int _rounds;
        private bool _off;

        public List<string> Faults { get; } = [];

        public BalanceStep? Read(WrittenStep step, int index)
        {
            var at = Line($"steps[{index}]");
            return step switch
            {
                { Round: { } round } => Round(step, round, at),
                { Turn: { } key } => Turn(key, step.Turns, at),
                { Rods: { } rods } => Rods(rods, at),
                { Look: { } stop } => Looked(stop, step.Gap, at),
                { Offer: { } rod } => Looked(rod, step.Gap, at),
                { Checked: { } fault } => Check(fault, step.Found, at),
                _ => Fault($"{at}: a step is a round, a turn, rods, a look, an offer or something checked; this is none of them."),
            };
        }

        private RoundRead? Round(WrittenStep step, JsonElement round, string at)
        {
            double? held = round.ValueKind is JsonValueKind.Number && round.TryGetDouble(out var rpm) ? rpm : null;
            if ((held is null && !(round.ValueKind is JsonValueKind.String && string.Equals(round.GetString(), "idle", StringComparison.OrdinalIgnoreCase))) || held is < 600 or > 9000)
            {
                Fault($"{at}.round: \"idle\", or the speed held, 600 to 9000 rpm.");
                return null;
            }

            if (step.Readings is null or { Count: 0 } || step.Readings.Any(r => r.Barrel is null))
            {
                Fault($"{at}.readings: at least one, each with its barrel and air, vacuum, lambda or header.");
                return null;
            }

            if (!Moments.TryGetValue(step.Moment ?? "working", out var moment))
            {
                Fault($"{at}.moment: \"as found\", \"working\" or \"as left\".");
                return null;
            }

            return new RoundRead(new BalanceRound
            {
                Number = ++_rounds,
                HeldRpm = held,
                Moment = moment,
                RodsOff = _off,
                OilCelsius = step.Oil,
                Readings = [.. step.Readings.Select(Reading)],
                Again = step.Again is { Barrel: not null } again ? Reading(again) : null,
            });
        }

        private static BarrelReading Reading(WrittenReading r) => new(r.Barrel!.Value) { Air = r.Air, Vacuum = r.Vacuum, Lambda = r.Lambda, Header = r.Header, Rpm = r.Rpm };

        private Turned? Turn(string key, double? turns, string at)
        {
            if (plan.Find(key) is null)
            {
                Fault($"{at}.turn: \"{key}\" is not on this engine. There are {string.Join(", ", plan.Adjusters.Select(a => a.Key))}.");
                return null;
            }

            if (turns is not { } x || !double.IsFinite(x) || Math.Abs(x) > 20)
            {
                Fault($"{at}.turns: how many turns, positive opens, such as 0.125.");
                return null;
            }

            return new Turned(plan.Find(key)!.Key, x);
        }

        private BalanceStep? Rods(string rods, string at)
        {
            _off = string.Equals(rods, "off", StringComparison.OrdinalIgnoreCase);
            return _off ? new RodsTakenOff() : string.Equals(rods, "on", StringComparison.OrdinalIgnoreCase) ? new RodsPutBack() : Fault($"{at}.rods: \"off\" or \"on\".");
        }

        private BalanceStep? Looked(string key, double? gap, string at) => plan.Find(key) is { } adjuster && gap is { } mm && Math.Abs(mm) < 50
            ? new LookedAt(adjuster.Key, mm)
            : Fault($"{at}: a stop looked at or a rod offered has a key of this engine and \"gap\" in mm.");

        private BalanceStep? Check(string fault, bool? found, string at) => FaultPlace.Read(fault, plan) is { } place
            ? new CheckedFor(place, found ?? false)
            : Fault($"{at}.checked: a fault and its place, such as \"leakBelowPlate barrel 3\" or \"deadScrew screw stop:2\". Faults: {string.Join(", ", Enum.GetNames<BalanceFault>().Select(n => char.ToLowerInvariant(n[0]) + n[1..]))}.");

        private BalanceStep? Fault(string fault)
        {
            Faults.Add(fault);
            return null;
        }
    }
}
