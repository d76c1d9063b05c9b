using Tickover.Workshop.Visits.Gates;

namespace Tickover.Workshop.Visits.Advising;

/// <summary>The day the car was promised for.</summary>
public sealed class DueAdviser : IAdviser
{
    private const int NearDays = 3;

    /// <inheritdoc/>
    public string Name => "promises";

    /// <inheritdoc/>
    public IEnumerable<Advice> Of(AdviceContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Record.Visit.DueOn is not { } due || context.Record.Visit.LeftOn is not null || due.DayNumber - context.Today.DayNumber > NearDays)
        {
            yield break;
        }

        var left = Route.Left(context.Record);
        yield return new Advice
        {
            Sentence = due < context.Today ? "Ring the owner: the day promised is gone" : $"Tell the owner whether {DayText.Of(due)} holds",
            Why = $"Promised for {DayText.Of(due)}, and {string.Join(", ", left.Select(s => s.Words()))} {(left.Count == 1 ? "is" : "are")} still to do.",
            Rank = AdviceRank.DueDate,
            Place = AdvicePlace.Visit,
            Minutes = 10,
        };
    }
}
