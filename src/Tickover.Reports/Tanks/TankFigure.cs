using Tickover.Reports.Paper;
using Tickover.Workshop.Tanks;

namespace Tickover.Reports.Tanks;

/// <summary>Tanks of a document on paper.</summary>
internal static class TankFigure
{
    /// <summary>Draws them with what was last known to be in; where nothing was read, half full, and the sentence says so.</summary>
    /// <param name="document">The document.</param>
    /// <returns>The figure; null where no tank is described.</returns>
    internal static Figure? Of(string document)
    {
        if (TankDocument.Read(document).Set is not { Tanks.Count: > 0 } set)
        {
            return null;
        }

        var known = set.LastKnownLitres is { } litres ? Math.Min(litres, set.CapacityLitres) : (double?)null;
        var view = new TankView { Analysis = TankAnalyst.Of(set), Litres = known ?? set.CapacityLitres / 2, IdPrefix = "tanks" };
        var frame = new TankFrame(view);
        var drawn = known is null ? "Drawn half full, for nobody noted what was in" : "Drawn with what was in when it was last read";
        return new Figure(d => TankPicture.Draw(d, view, frame), frame.Width, frame.Height, $"{drawn}. {TankSentence.Of(view)}");
    }
}
