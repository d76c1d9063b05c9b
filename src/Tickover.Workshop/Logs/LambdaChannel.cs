namespace Tickover.Workshop.Logs;

/// <summary>One λ sensor over a log.</summary>
public sealed record LambdaChannel
{
    /// <summary>Bank from 1 whose exhaust it sees; null where one probe sees all, or nobody said.</summary>
    public int? Bank { get; init; }

    /// <summary>λ at each sample; NaN where there is none.</summary>
    public required IReadOnlyList<float> Lambda { get; init; }

    /// <summary>Leanest λ the sensor shows: from here on it is saturated.</summary>
    public float LeanLimit { get; init; } = float.PositiveInfinity;

    /// <summary>Richest λ the sensor shows: below, it is saturated.</summary>
    public float RichLimit { get; init; } = float.NegativeInfinity;
}
