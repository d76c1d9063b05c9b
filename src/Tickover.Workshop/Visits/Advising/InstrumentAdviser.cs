using Tickover.Workshop.Visits.Gates;

namespace Tickover.Workshop.Visits.Advising;

/// <summary>Instruments used in this visit that are overdue for comparison.</summary>
public sealed class InstrumentAdviser : IAdviser
{
    /// <inheritdoc/>
    public string Name => "instruments";

    /// <inheritdoc/>
    public IEnumerable<Advice> Of(AdviceContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return Live.Readings(context.Record).Select(r => r.Instrument).Distinct().Select(context.Record.Workshop.Find).OfType<Instrument>()
            .Where(i => i.DueOn < context.Today)
            .OrderBy(i => i.DueOn)
            .Select(i => new Advice
            {
                Sentence = $"Compare the {i.Name} with something better",
                Why = $"Readings of this visit rest on it, and it was due {DayText.Of(i.DueOn!.Value)}.",
                Rank = AdviceRank.Instrument,
                Place = AdvicePlace.Instruments,
                Minutes = 20,
            });
    }
}
