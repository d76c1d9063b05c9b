namespace Tickover.Workshop.StripDown.Wear;

/// <summary>What a sheet of wear comes to.</summary>
/// <param name="Items">Everything judged, the worst first.</param>
/// <param name="Barrels">Each barrel in engine order.</param>
/// <param name="Verdict">In a line.</param>
public sealed record WearAnswer(IReadOnlyList<WearItem> Items, IReadOnlyList<WearBarrel> Barrels, string Verdict)
{
    /// <summary>Whether something must not stay as it is.</summary>
    public bool IsNo => Items.Any(i => i.Grade == WearGrade.Bad);
}
