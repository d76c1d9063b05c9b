using System.Globalization;
using Microsoft.AspNetCore.Components;
using Tickover.Workshop.Balance.Recorded;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Web.Balance;

/// <summary>Rounds of balancing: the engine from above, the next move, the keypad.</summary>
public partial class BalancePage
{
    private const int MostArrived = 60;

    /// <summary>The visit.</summary>
    [Parameter, EditorRequired]
    public VisitRecord Record { get; set; } = null!;

    /// <summary>What is shown.</summary>
    [Parameter, EditorRequired]
    public BalanceBench Bench { get; set; } = null!;

    /// <summary>Whether a person chose what to read instead of what the advice asks for.</summary>
    [Parameter]
    public bool IsChosen { get; set; }

    /// <summary>Who is at work here.</summary>
    [Parameter]
    public Id<Person>? Person { get; set; }

    /// <summary>Today.</summary>
    [Parameter]
    public DateOnly Today { get; set; }

    /// <summary>What to ask once before an unusual figure is kept.</summary>
    [Parameter]
    public string? Ask { get; set; }

    private IReadOnlyList<GateStatus> Shut => ShutOn(Record, Today);

    private bool MayRun => Shut.Count == 0;

    private string Where => string.Create(CultureInfo.InvariantCulture, $"Balance, {(Bench.Advice.Rounds.Count == 0 ? "no round yet" : $"round {Bench.Advice.Rounds.Count}")}, {Bench.Speed}{(Bench.RodsOff ? ", rods off" : "")}{Oil}");

    private string Oil => Record.Readings.LastOrDefault(r => !r.Removed && string.Equals(r.Measure, "oilTemperature", StringComparison.Ordinal) && r.Si is not null) is { } oil ? $", oil {oil.Typed}" : "";

    private IReadOnlyList<Guid> Arrived => [.. BalanceOfVisit.Arrived(Record).TakeLast(MostArrived)];

    /// <summary>The gates that are shut before the engine is read.</summary>
    internal static IReadOnlyList<GateStatus> ShutOn(VisitRecord record, DateOnly today) =>
        [.. StageGates.Of(Stage.Balance).Concat(StageGates.Inside(Stage.Balance)).Select(g => GateStatus.Of(record, g, today)).Where(g => !g.LetsThrough)];

    private static string Part(string key) => key.StartsWith("barrel:", StringComparison.Ordinal) ? "#pad" : $"#{OtherTurns.Anchor(key)}";
}
