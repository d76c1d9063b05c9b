using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Advising;

namespace Tickover.Web.Mixture;

/// <summary>What the mixture map says of a car that is in the shop, for its next steps.</summary>
/// <param name="surveys">The surveys; one that is not at hand is computed beside the page, and its advice comes the next time.</param>
public sealed class MixtureAdvice(SurveyCache surveys) : IMixtureAdvice
{
    // A tenth of lambda beyond the target is heard and felt; less is within what the model is good to
    private const double WorthSaying = 0.1;

    /// <inheritdoc/>
    public MixtureWords? Of(VisitRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
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
}
