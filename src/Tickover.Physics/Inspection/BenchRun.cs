namespace Tickover.Physics.Inspection;

/// <summary>One run of a jet on a flow bench: how long a measured volume takes under a head that is held or falls.</summary>
public sealed record BenchRun
{
    /// <summary>Volume that ran through, m³.</summary>
    public required double VolumeCubicMetres { get; init; }

    /// <summary>Time it took, s.</summary>
    public required double Seconds { get; init; }

    /// <summary>Height of the liquid's surface over the mouth of the jet as the watch starts, m.</summary>
    public required double HeadAtFirstMetres { get; init; }

    /// <summary>The same as the watch stops, m; as at first where the head is held.</summary>
    public required double HeadAtLastMetres { get; init; }

    /// <summary>Head that would pass as much in the same time if it were held, m.</summary>
    /// <remarks>Exact for a vessel of even width and a flow as the root of the head.</remarks>
    public double MeanHeadMetres => Math.Pow((Math.Sqrt(Precondition.Positive(HeadAtFirstMetres)) + Math.Sqrt(Precondition.Positive(HeadAtLastMetres))) / 2, 2); // inspection (1)

    /// <summary>Volume flow, m³/s.</summary>
    public double FlowCubicMetresPerSecond => Precondition.Positive(VolumeCubicMetres) / Precondition.Positive(Seconds); // inspection (2)
}
