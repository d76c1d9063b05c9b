using Tickover.Reports.HandOver.Parts;
using Tickover.Reports.Paper;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.HandOver;

/// <summary>The owner's account of a visit: what was wrong, what was done, how to live with it. Plain words first, figures behind.</summary>
/// <remarks>Built from the record alone; what is not in the record is said not to be noted, never filled in.</remarks>
public static class HandOverDocument
{
    /// <summary>Writes the account.</summary>
    /// <param name="record">The visit.</param>
    /// <param name="settings">What is not in the record.</param>
    /// <returns>The document, for <see cref="PaperPdf"/> and <see cref="PaperHtml"/>.</returns>
    /// <exception cref="ArgumentNullException">The record or the settings are missing.</exception>
    public static PaperDocument Of(VisitRecord record, HandOverSettings settings)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(settings);
        var telling = new Telling(record, settings);
        return new PaperDocument
        {
            Title = $"Hand-over of {record.Car.Name}, visit {record.Visit.Number}",
            Author = telling.House.Name.Length > 0 ? telling.House.Name : "The workshop",
            Language = telling.Language,
            Foot = $"Hand-over · {record.Car.Name} · visit {record.Visit.Number} · {telling.Day(settings.On)}{(telling.House.Demonstration ? " · invented example" : "")}",
            FileName = $"hand-over-{record.Visit.Number}",
            Blocks =
            [
                .. IdentityPart.Of(telling),
                .. FoundPart.Of(telling),
                .. DonePart.Of(telling),
                .. GaugePart.Of(telling),
                .. BeforeAfterPart.Of(telling),
                .. RoadJetsPart.Of(telling),
                .. ChangedPart.Of(telling),
                .. NotDonePart.Of(telling),
                .. UsePart.Of(telling),
                .. StopPart.Of(telling),
                .. ChecksPart.Of(telling),
                .. PricePart.Of(telling),
                .. SafetyPart.Of(telling),
                .. TrustPart.Of(telling),
                .. SignaturePart.Of(telling),
                .. FiguresPart.Of(telling),
            ],
        };
    }
}
