using System.Globalization;
using System.Text.Json;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Exhaust;
using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Balance.Documents;

/// <summary>Reads the steps of a rounds document one after the other and gathers what is wrong with them.</summary>
/// <param name="plan">The engine.</param>
internal sealed class StepReader(EnginePlan plan)
{
    private static readonly Dictionary<string, Moment> Moments = new(StringComparer.OrdinalIgnoreCase)
    {
        ["as found"] = Moment.AsFound,
        ["working"] = Moment.Working,
        ["as left"] = Moment.AsLeft,
    };

    private int _rounds;
    private bool _off;

    /// <summary>What is wrong, where, and what to do.</summary>
    public List<string> Faults { get; } = [];

    /// <summary>Reads a step; null where it cannot be read.</summary>
    public BalanceStep? Read(WrittenStep step, int index)
    {
        var at = string.Create(CultureInfo.InvariantCulture, $"steps[{index}]");
        var things = Things(step).ToList();
        if (things.Count > 1)
        {
            return Fault($"{at}: one thing a step, in the order done; this has {string.Join(" and ", things)}.");
        }

        return step switch
        {
            { Round: { } round } => Round(step, round, at),
            { Turn: { } key } => Turn(key, step.Turns, at),
            { Gas: { } bank } => Gas(bank, step, at),
            { Rods: { } rods } => Rods(rods, at),
            { Look: { } stop } => Looked(stop, step.Gap, at),
            { Offer: { } rod } => Looked(rod, step.Gap, at),
            { Checked: { } fault } => Check(fault, step.Found, at),
            _ => Fault($"{at}: a step is a round, a turn, gas, rods, a look, an offer or something checked; this is none of them."),
        };
    }

    private static IEnumerable<string> Things(WrittenStep? step) =>
        from thing in new (string Name, object? Value)[] { ("round", step?.Round), ("turn", step?.Turn), ("gas", step?.Gas), ("rods", step?.Rods), ("look", step?.Look), ("offer", step?.Offer), ("checked", step?.Checked) }
        where thing.Value is not null
        select thing.Name;

    private RoundRead? Round(WrittenStep step, JsonElement round, string at)
    {
        double? held = round.ValueKind is JsonValueKind.Number && round.TryGetDouble(out var rpm) ? rpm : null;
        if (RoundFault(step, round, held) is { } fault)
        {
            Fault($"{at}.{fault}");
            return null;
        }

        var readings = step.Readings!.Select(Reading).ToList();
        var again = step.Again is null ? null : Reading(step.Again);
        if (again is not null && again.Barrel != readings[0].Barrel)
        {
            // no proof of drift, but a reading all the same
            readings.Add(again);
            again = null;
        }

        return new RoundRead(new BalanceRound
        {
            Number = ++_rounds,
            HeldRpm = held,
            Moment = Moments[step.Moment ?? "working"],
            RodsOff = _off,
            OilCelsius = step.Oil,
            Readings = readings,
            Again = again,
        });
    }

    private static string? RoundFault(WrittenStep step, JsonElement round, double? held) =>
        held is < 600 or > 9000 || (held is null && !IsIdle(round))
            ? "round: \"idle\", or the speed held, 600 to 9000 rpm."
        : step.Readings is null or { Count: 0 } || step.Readings.Any(r => r?.Barrel is null) ? "readings: at least one, each with its barrel and air, vacuum, lambda or header."
        : step.Again is { Barrel: null } ? "again: the barrel, and what it read."
        : !Moments.ContainsKey(step.Moment ?? "working") ? "moment: \"as found\", \"working\" or \"as left\"."
        : Figures(step).Any(f => !double.IsFinite(f ?? 0))
            ? "readings: one of the figures is too large to be one."
        : null;

    private static bool IsIdle(JsonElement round) => round.ValueKind is JsonValueKind.String && string.Equals(round.GetString(), "idle", StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<double?> Figures(WrittenStep step) =>
        step.Readings!.Append(step.Again).OfType<WrittenReading>().SelectMany(r => new[] { r.Air, r.Vacuum, r.Lambda, r.Header, r.Rpm }).Append(step.Oil);

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

    private BalanceStep? Gas(int bank, WrittenStep step, string at)
    {
        if (bank < 1 || bank > plan.Banks)
        {
            return Fault(string.Create(CultureInfo.InvariantCulture, $"{at}.gas: there is no bank {bank}; banks are counted from 1 to {plan.Banks}."));
        }

        return (step.Lambda ?? (step.Co is { } percent ? LambdaOfMonoxide.Of(percent) : null)) is { } lambda and > 0.5 and < 2
            ? new BankGas(bank, lambda)
            : Fault($"{at}.gas: \"lambda\" of the whole bank, such as 0.92, or \"co\" in per cent, such as 3.2.");
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
