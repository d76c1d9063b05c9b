using Tickover.Web.Frame;
using Tickover.Web.Visits;
using Tickover.Workshop.JetFittings;
using Tickover.Workshop.Visits;

namespace Tickover.Web.RoadLogs;

/// <summary>"I fit this set": the set goes into the car as it is from now on, and what was expected of it is kept beside it.</summary>
internal static class FitEndpoints
{
    public static void MapFitting(this IEndpointRouteBuilder visit) =>
        visit.MapPost("/fit", (string id, VisitDesk desk, JetDesk jets) => desk.OnFormAsync(id, (record, fields) => FitAsync(record, fields, desk, jets))).GuardForm();

    private static async Task<IResult> FitAsync(VisitRecord record, FormFields fields, VisitDesk desk, JetDesk jets)
    {
        var (back, stock) = (RoadLogEndpoints.Of(record), await desk.Record.AllAsync<StockJet>());

        // A set that is in makes another question, so sending the form twice cannot fit it twice.
        if (jets.Find(record, stock)?.Outcome is not { Advice: { } advice } outcome)
        {
            return desk.Refuse("The logs, the shelf or the car have changed since these jets were chosen, or the set is in already. Choose again; nothing was changed.", back);
        }

        if (outcome.Offers.FirstOrDefault(o => string.Equals(o.Key, fields.Text("choice"), StringComparison.Ordinal)) is not { Proposal.Changes.Count: > 0 } offer)
        {
            return desk.Refuse("That is none of the sets on offer, or it changes nothing. Load the page again.", back);
        }

        var items = SetFitting.Items(record, Chosen(offer, outcome, advice.Now, desk), stock);
        return await desk.KeepAsync(fields, $"fitted: {SetFitting.Words(offer.Proposal)}", record.Visit.Id, back, [.. items]);
    }

    private static ChosenSet Chosen(JetOffer offer, JetOutcome outcome, Workshop.JetChoice.JetProposal before, VisitDesk desk) => new()
    {
        Proposal = offer.Proposal,
        Before = before,
        Choice = offer.Name.ToLowerInvariant(),
        RestsOn = outcome.Fit is { } fit ? string.Join(", ", fit.Runs.Select(r => r.Name)) : "",
        Today = desk.Today,
        Now = desk.Now,
    };
}
