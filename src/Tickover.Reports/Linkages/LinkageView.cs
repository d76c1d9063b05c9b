using Tickover.Reports.Mixture;
using Tickover.Workshop.Linkages;

namespace Tickover.Reports.Linkages;

/// <summary>What the picture of a linkage shows.</summary>
public sealed record LinkageView
{
    /// <summary>The linkage and what it does.</summary>
    public required LinkageAnalysis Analysis { get; init; }

    /// <summary>How far the pedal is down, 0 to 1.</summary>
    public required double Down { get; init; }

    /// <summary>As found or as advised.</summary>
    public LinkageSetting Setting { get; init; }

    /// <summary>For a wide page or for a phone.</summary>
    public PictureSize Size { get; init; }

    /// <summary>Begins every id inside, so that several pictures live on one page.</summary>
    public required string IdPrefix { get; init; }

    /// <summary>The linkage shown.</summary>
    public Linkage Linkage => Setting is LinkageSetting.AsFound ? Analysis.Linkage : Analysis.Equalised.Linkage;

    /// <summary>Its course over the travel.</summary>
    public IReadOnlyList<LinkageMoment> Course => Setting is LinkageSetting.AsFound ? Analysis.Course : Analysis.Equalised.Course;
}
