using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Demonstration;

/// <summary>An invented workshop with invented people, cars and figures, to try the program on. None of it was ever measured.</summary>
public static class DemonstrationWorkshop
{
    /// <summary>Device the acts come from.</summary>
    public const string Device = "demonstration";

    /// <summary>Names of the sample worksheets its visits can hold.</summary>
    public static IReadOnlyList<string> Sheets => KeptSheets.Names;

    /// <summary>Everything that was done in it, in the order done. The same day gives the same acts with the same keys, so that it is kept once.</summary>
    /// <param name="documents">Car documents.</param>
    /// <param name="today">The day it is loaded; all dates are counted back from it.</param>
    /// <returns>The acts.</returns>
    public static IReadOnlyList<Act> Acts(DemonstrationDocuments documents, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(documents);
        var script = new Script(today);
        Cast.Enter(script, documents);
        TernEarlier.Play(script);
        TernArrival.Play(script);
        TernTanks.Play(script);
        TernBench.Play(script);
        TernRunning.Play(script);
        OtherVisits.Play(script);
        ShelfAndRuns.Play(script, documents);
        KeptSheets.Play(script, documents);
        return script.Acts;
    }
}
