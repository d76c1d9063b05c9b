namespace Tickover.Reports.Balance;

/// <summary>One round in the history.</summary>
/// <param name="Number">Number from 1.</param>
/// <param name="Before">What was moved before it, such as "Front coupling screw: out ¼".</param>
/// <param name="Marks">The barrels: how much, and how each lies against the limit.</param>
/// <param name="Mean">Mean over the barrels.</param>
public sealed record RoundRow(int Number, string Before, IReadOnlyList<(double Value, RingStanding Standing)> Marks, double Mean)
{
    /// <summary>The limit either side of the mean, as a part of it; null where there is none.</summary>
    public double? LimitPart { get; init; }

    /// <summary>Whether the round is void: the engine drifted while it was read.</summary>
    public bool IsVoid { get; init; }

    /// <summary>Largest less smallest.</summary>
    public double Spread => Marks.Count == 0 ? 0 : Marks.Max(m => m.Value) - Marks.Min(m => m.Value);
}
