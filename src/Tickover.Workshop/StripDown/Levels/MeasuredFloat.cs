namespace Tickover.Workshop.StripDown.Levels;

/// <summary>The float of one carburettor as it was measured.</summary>
public sealed record MeasuredFloat
{
    /// <summary>Which carburettor, such as "front".</summary>
    public required string Where { get; init; }

    /// <summary>Dry height, mm, with the needle just shut.</summary>
    public required double DryMillimetres { get; init; }

    /// <summary>What it is measured from.</summary>
    public required HeightDatum From { get; init; }

    /// <summary>What it is measured to.</summary>
    public required HeightEnd To { get; init; }

    /// <summary>Mass, g.</summary>
    public required double Grams { get; init; }

    /// <summary>Wet level by a sight tube, mm below the lid; null where it was not taken.</summary>
    public double? WetMillimetres { get; init; }

    /// <summary>Height with the float hanging right down, from the same datum to the same side, mm; null where it was not taken.</summary>
    public double? DropMillimetres { get; init; }
}
