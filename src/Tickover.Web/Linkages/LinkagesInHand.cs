using Tickover.Web.Worksheets;
using Tickover.Workshop.Linkages;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Linkages;

/// <summary>Linkages in hand.</summary>
public sealed class LinkagesInHand
{
    /// <summary>Makes the shelf.</summary>
    /// <param name="options">Names the folder of the samples.</param>
    public LinkagesInHand(WebAppOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        Linkages = new(options.SamplesFolder, ".linkage.json", text => LinkageDocument.Read(text) is var reading ? (reading.Linkage is { } linkage ? new LinkageInHand(linkage) : null, reading.Faults) : default);
        Intake = new()
        {
            Address = "/linkages",
            Title = "Linkages",
            Where = "From the pedal to every plate",
            Ask = "A linkage as measured",
            Lead = "Shafts, levers and rods in millimetres and degrees, measured with the pedal up and every plate on its stop.",
            Guides = [("/linkage-document", "How a linkage is written down")],
            Example = "osprey.linkage.json",
            Stage = Stage.Balance,
            Kinds = [IntakeKind.Of(LinkageDocument.Format, Linkages, "/linkages", one => (one.Linkage.Name, $"{one.Linkage.Carburettors.Count} carburettors, {one.Linkage.Links.Count} rods and couplings", ""))],
        };
    }

    /// <summary>The linkages.</summary>
    public DocumentShelf<LinkageInHand> Linkages { get; }

    /// <summary>Where they are taken in.</summary>
    public Intake Intake { get; }
}
