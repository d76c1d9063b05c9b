using Tickover.Workshop.Visits.Gates;

namespace Tickover.Workshop.Visits.Advising;

/// <summary>Questions to the owner without an answer, while the work goes on.</summary>
public sealed class ApprovalAdviser : IAdviser
{
    /// <inheritdoc/>
    public string Name => "approvals";

    /// <inheritdoc/>
    public IEnumerable<Advice> Of(AdviceContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Record.Visit.WaitsOn == WaitsOn.Owner ? [] : context.Record.Approvals
            .Where(a => !a.Removed && a.Answer == ApprovalAnswer.Open)
            .OrderBy(a => a.AskedOn).ThenBy(a => a.Kept)
            .Select(a => new Advice
            {
                Sentence = $"Get an answer: {a.Asked.TrimEnd('.')}",
                Why = $"Asked {DayText.Ago(a.AskedOn, context.Today)} and not answered.",
                Rank = AdviceRank.Approval,
                Place = AdvicePlace.Approvals,
                Minutes = 10,
            });
    }
}
