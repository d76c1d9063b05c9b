using System.Globalization;

namespace Tickover.Workshop.Visits.Advising;

/// <summary>The stop-and-ask: what was agreed with the owner against what is spent.</summary>
/// <remarks>The record prices parts but not labour; hours are held against the hours estimated. Extra work the owner approved raises the limit by its price.</remarks>
public sealed class AgreementAdviser : IAdviser
{
    /// <inheritdoc/>
    public string Name => "agreement";

    /// <inheritdoc/>
    public IEnumerable<Advice> Of(AdviceContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        var visit = context.Record.Visit;
        var parts = context.Record.Parts.Where(p => !p.Removed).Sum(p => p.Price ?? 0);
        var extra = context.Record.Approvals.Where(a => !a.Removed && a.Answer == ApprovalAnswer.Yes).Sum(a => a.Price ?? 0);
        var hours = context.Record.Times.Where(t => !t.Removed).Sum(t => t.Minutes) / 60m;
        if ((visit.StopAndAsk ?? visit.Estimate) is { } limit && parts >= limit + extra)
        {
            yield return Ask($"Parts come to {Money(parts, context)}; the owner is asked first beyond {Money(limit + extra, context)}.");
        }

        if (visit.EstimateHours is { } estimated && hours > estimated)
        {
            yield return Ask(string.Create(CultureInfo.InvariantCulture, $"{hours:0.#} h are written down; {estimated:0.#} h were estimated."));
        }

        if (context.Stage > Stage.Arrival && (visit.Scope.Length == 0 || visit.ScopeAgreed.Length == 0))
        {
            yield return Ask("The scope is not written down as agreed.") with { Sentence = "Agree the scope in writing before going on" };
        }
    }

    private static Advice Ask(string why) => new()
    {
        Sentence = "Ask the owner before going on",
        Why = why,
        Evidence = ["Labour has no price in the record; hours are compared with the hours estimated."],
        Rank = AdviceRank.StopAndAsk,
        Place = AdvicePlace.Approvals,
        Minutes = 15,
    };

    private static string Money(decimal sum, AdviceContext context) => string.Create(CultureInfo.InvariantCulture, $"{context.Record.Workshop.House.Currency} {sum:#,0.##}");
}
