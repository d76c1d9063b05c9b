using System.Globalization;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Workshop.Visits.Advising;

/// <summary>The taps before and inside the stage in hand.</summary>
public sealed class GateAdviser : IAdviser
{
    private static readonly string[] Numbers = ["None", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine"];

    /// <inheritdoc/>
    public string Name => "taps";

    /// <inheritdoc/>
    public IEnumerable<Advice> Of(AdviceContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        var gates = StageGates.Of(context.Stage).Concat(context.IsBegun && context.Stage != Stage.Arrival ? StageGates.Inside(context.Stage) : []);
        var shut = gates.Select(g => GateStatus.Of(context.Record, g, context.Today)).FirstOrDefault(s => !s.LetsThrough);
        return shut is null ? [] : [Advise(shut, context.Stage)];
    }

    private static Advice Advise(GateStatus gate, Stage stage)
    {
        var wanting = gate.Wanting.ToList();
        var first = wanting[0];
        return new Advice
        {
            Sentence = wanting.Count == 1 ? $"Sign {first.Check.Name}, then {Then(gate.Definition.Gate, stage)}" : $"Check and sign {first.Check.Name}",
            Why = $"{Count(gate)}{(first.State == CheckState.Stale ? $" {Capital(first.StaleBecause)}" : "")} {first.Check.Otherwise}",
            Evidence = [.. gate.Checks.Select(c => $"{c.Check.Words}: {c.Words}"), .. gate.Overrides.Select(o => o.Words)],
            Rank = AdviceRank.Gate,
            Place = new AdvicePlace(AdvicePlaceKind.Gate, stage, gate.Definition.Gate),
            Minutes = wanting.Count * 10,
        };
    }

    private static string Count(GateStatus gate)
    {
        var signed = gate.Checks.Count - gate.Wanting.Count();
        return string.Create(CultureInfo.InvariantCulture, $"{Numbers[signed]} of {Numbers[gate.Checks.Count].ToLowerInvariant()} checks {(signed == 1 ? "counts" : "count")} before {gate.Definition.Before}.");
    }

    private static string Then(Gate gate, Stage stage) => gate switch
    {
        Gate.EngineMayRun => "start the engine",
        Gate.FitForRoad => "drive",
        Gate.FitToTune when stage == Stage.Balance => "read the first round",
        _ => $"go on to {stage.Words()}",
    };

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
