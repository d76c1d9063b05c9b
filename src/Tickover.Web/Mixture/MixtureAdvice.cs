using Tickover.Web.RoadLogs;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Advising;

namespace Tickover.Web.Mixture;

/// <summary>What the mixture map says of a car that is in the shop, for its next steps.</summary>
/// <param name="surveys">The surveys; one that is not at hand is computed beside the page, and its advice comes the next time.</param>
/// <param name="jets">Jets chosen; a choice for the visit comes before what the map alone says.</param>
public sealed class MixtureAdvice(SurveyCache surveys, JetDesk jets) : IMixtureAdvice
{
    // A tenth of lambda beyond the target is heard and felt; less is within what the model is good to
    private const double WorthSaying = 0.1;

    /// <inheritdoc/>
    public MixtureWords? Of(VisitRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        if (Chosen(record) is { } chosen)
        {
            return chosen;
        }

        if (record.Descriptions is not [.., var latest] || CarDocument.Read(latest.Document).Car is not { } car || surveys.AtHand(car) is not { } survey)
        {
            return null;
        }

        var map = survey.Map;
        var (barrel, furthest) = map.Barrels.Select(b => (b.BarrelNumber, FurthestPoint.Of(map, b.BarrelNumber))).MaxBy(b => Math.Abs(b.Item2.Beyond));
        return Math.Abs(furthest.Beyond) < WorthSaying
            ? null
            : new MixtureWords(
                $"Look at the mixture at {furthest.SpeedRpm:0} rpm, {furthest.ThrottleDegrees:0.#}° of throttle",
                $"There the map of its description is furthest from target, and {(furthest.Beyond > 0 ? "too lean" : "too rich")}. Computed, not measured.",
                [Drawings.Sentence(map, barrel)]);
    }

    private MixtureWords? Chosen(VisitRecord record)
    {
        // Only while the car is as it was when the choice was made.
        if (jets.Last(record.Visit.Id) is not { Proposal: { Changes.Count: > 0 } proposal, Advice: { } advice } outcome
            || record.Descriptions is not [.., var latest] || !string.Equals(latest.Document, advice.Now.Car.Document, StringComparison.Ordinal))
        {
            return null;
        }

        var basis = outcome.Fit is { } fit ? $"from {fit.Points.Count} readings of the road" : "from the description alone";
        return new MixtureWords(
            $"Fit {string.Join(", ", proposal.Changes.Select(c => $"{c.Label.ToLowerInvariant()} {c.To}"))}",
            string.Create(System.Globalization.CultureInfo.InvariantCulture, $"The chance of being in target rises from {100 * advice.Now.InTargetOverall:0} to {100 * proposal.InTargetOverall:0} %, {basis}."),
            [.. proposal.Changes.Select(c => $"{c.Label}: {c.From} to {c.To}")])
        {
            FromLogs = true,
        };
    }
}
