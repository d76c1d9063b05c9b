namespace Tickover.Records.Carrying;

/// <summary>What came of an import.</summary>
/// <param name="Manifest">What the export says of itself.</param>
/// <param name="Added">Items taken in, by kind; kinds without any are left out.</param>
/// <param name="Left">Items that were here already with the same content, and were left.</param>
/// <param name="Acts">Acts of the journal taken in.</param>
/// <param name="Pictures">Pictures taken in.</param>
/// <param name="Renumbered">Visits whose number was taken here, as (number there, number here).</param>
/// <param name="Complaints">Why nothing was taken in, one sentence each; empty where all of it was.</param>
public sealed record ImportReport(
    ExportManifest Manifest,
    IReadOnlyDictionary<string, int> Added,
    int Left,
    int Acts,
    int Pictures,
    IReadOnlyList<(int There, int Here)> Renumbered,
    IReadOnlyList<string> Complaints)
{
    /// <summary>Whether everything is in the record now.</summary>
    public bool IsIn => Complaints.Count == 0;
}
