namespace Tickover.Reports.Balance;

/// <summary>How deep things lie across an engine of two banks, inwards from the outside of each, drawing units.</summary>
internal sealed record BankedDepths
{
    internal static readonly BankedDepths Lying = new() { HeadDepth = 46, CylinderRadius = 15, Outside = 78, SpindleIn = 10, Valley = 6, Reach = 50 };

    internal static readonly BankedDepths Upright = new() { HeadDepth = 32, CylinderRadius = 13, Outside = 58, SpindleIn = 8, Valley = 2, Reach = 42 };

    internal required double HeadDepth { get; init; }

    internal required double CylinderRadius { get; init; }

    /// <summary>Where the cells of the barrels begin.</summary>
    internal required double Outside { get; init; }

    /// <summary>How far outside the cells the spindle runs.</summary>
    internal required double SpindleIn { get; init; }

    /// <summary>Between the cells of the banks.</summary>
    internal required double Valley { get; init; }

    /// <summary>Largest reach of a ring.</summary>
    internal required double Reach { get; init; }
}
