using System.Globalization;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Workshop.Visits.Advising;

/// <summary>Whoever else has the ball: the owner, a part, the clock.</summary>
public sealed class WaitingAdviser : IAdviser
{
    /// <inheritdoc/>
    public string Name => "waiting";

    /// <inheritdoc/>
    public IEnumerable<Advice> Of(AdviceContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Record.Visit.WaitsOn switch
        {
            WaitsOn.Owner => [Owner(context)],
            WaitsOn.Parts => [Parts(context)],
            WaitsOn.Clock => [Clock(context)],
            _ => [],
        };
    }

    private static Advice Owner(AdviceContext context)
    {
        var visit = context.Record.Visit;
        var owner = context.Record.Owner?.Name is { Length: > 0 } name ? name : "the owner";
        var asked = visit.WaitingSince is { } since ? $"Asked {DayText.Ago(since, context.Today)}" : "Asked, the day is not noted";
        return Build(context, $"Ring {owner}: {Topic(visit)}", $"{asked}; the work waits for the answer.", AdvicePlace.Approvals);
    }

    private static Advice Parts(AdviceContext context)
    {
        var late = context.Record.Parts.Where(p => !p.Removed && p.State == PartState.Ordered && p.PromisedFor < context.Today).OrderBy(p => p.PromisedFor).FirstOrDefault();
        if (late is not null)
        {
            return Build(context, $"Ask where the parts are: {late.What}", $"Promised for {DayText.Of(late.PromisedFor!.Value)}, which is gone.", AdvicePlace.Parts);
        }

        var next = context.Record.Parts.Where(p => !p.Removed && p.State is PartState.Ordered or PartState.ToOrder).OrderBy(p => p.PromisedFor ?? DateOnly.MaxValue).ThenBy(p => p.Kept).FirstOrDefault();
        if (next is null)
        {
            return Build(context, "Go on: every part on the list is here", "The visit is marked as waiting for parts, and none is outstanding.", AdvicePlace.Visit);
        }

        return next.State == PartState.ToOrder
            ? Build(context, $"Order {next.What}", "The work waits for it and it is not ordered.", AdvicePlace.Parts)
            : Build(context, $"Wait for {next.What}{(next.PromisedFor is { } day ? $", promised for {DayText.Of(day)}" : "")}", $"{(next.OrderedOn is { } on ? $"Ordered {DayText.Of(on)}" : "Ordered")}; nothing can be fitted before.", AdvicePlace.Parts);
    }

    private static Advice Clock(AdviceContext context)
    {
        var visit = context.Record.Visit;
        if (visit.WaitingUntil is not { } until)
        {
            return Build(context, $"Set a time for {Topic(visit)}", "The visit waits on the clock and no end is noted.", AdvicePlace.Visit);
        }

        return until <= context.Now
            ? Build(context, $"Look at {Topic(visit)}: its time is up", $"It was due {Moment(until, context)}.", AdvicePlace.Of(context.Stage))
            : Build(context, $"Leave {Topic(visit)} until {Moment(until, context)}", $"{Hours(until - context.Now)} to go.", AdvicePlace.Visit);
    }

    private static Advice Build(AdviceContext context, string sentence, string why, AdvicePlace place) => new()
    {
        Sentence = sentence,
        Why = why,
        Evidence = context.Record.Visit.WaitingFor.Length > 0 ? [$"Waits for: {context.Record.Visit.WaitingFor}"] : [],
        Rank = AdviceRank.Waiting,
        Place = place,
        Minutes = 10,
    };

    private static string Topic(Visit visit) => visit.WaitingFor.Length > 0 ? visit.WaitingFor.TrimEnd('.') : "what is waited for";

    private static string Hours(TimeSpan left) => left.TotalHours < 1
        ? string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(left.TotalMinutes)} min")
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Round(left.TotalHours)} h");

    private static string Moment(DateTimeOffset at, AdviceContext context)
    {
        var local = at.ToOffset(context.Now.Offset);
        var day = (DateOnly.FromDateTime(local.DateTime).DayNumber - context.Today.DayNumber) switch
        {
            0 => "today",
            1 => "tomorrow",
            -1 => "yesterday",
            _ => DayText.Of(DateOnly.FromDateTime(local.DateTime)),
        };
        return $"{day} {local.ToString("HH:mm", CultureInfo.InvariantCulture)}";
    }
}
