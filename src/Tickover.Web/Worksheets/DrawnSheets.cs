using Tickover.Web.Gauges;
using Tickover.Web.StripDown;
using Tickover.Web.Walls;
using Tickover.Workshop.Gauges;
using Tickover.Workshop.Leaks;
using Tickover.Workshop.StripDown.Levels;
using Tickover.Workshop.StripDown.Wear;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Walls;

namespace Tickover.Web.Worksheets;

/// <summary>Opens a kept worksheet on the page that draws it.</summary>
/// <param name="walls">Surveys and leak tests in hand.</param>
/// <param name="gauges">Gauges in hand.</param>
/// <param name="strip">Sheets of the strip-down in hand.</param>
public sealed class DrawnSheets(WallDesk walls, GaugesInHand gauges, StripDesk strip)
{
    /// <summary>Whether a form has a page that draws it.</summary>
    /// <param name="format">What the document's format says.</param>
    /// <returns>True where it has.</returns>
    public static bool Has(string format) => format is WallDocument.Format or LeakDocument.Format or GaugeDocument.Format or LevelDocument.Format or WearDocument.Format;

    /// <summary>Takes a worksheet into the hand.</summary>
    /// <param name="sheet">The worksheet.</param>
    /// <param name="visit">The visit it is opened from.</param>
    /// <returns>The page that draws it; null where there is none, or the document can no longer be read.</returns>
    public string? Open(Worksheet sheet, Id<Visit> visit)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return sheet.Form switch
        {
            WallDocument.Format when WallDocument.Read(sheet.Document).Survey is { } survey => WallAddress.Wall(walls.Walls.Take(sheet.Document, WallAnalyst.Of(survey)), visit),
            LeakDocument.Format when LeakDocument.Read(sheet.Document).Sheet is { } leak => WallAddress.Leak(walls.Leaks.Take(sheet.Document, LeakAnalyst.Of(leak)), visit),
            GaugeDocument.Format when GaugeDocument.Read(sheet.Document).Story is { } story => GaugePlace.Of(gauges.Stories.Take(sheet.Document, story), visit),
            LevelDocument.Format when LevelDocument.Read(sheet.Document).Sheet is { } levels => StripAddress.Level(strip.Levels.Take(sheet.Document, StripDesk.Of(levels)), visit),
            WearDocument.Format when WearDocument.Read(sheet.Document).Sheet is { } wear => StripAddress.Wear(strip.Wear.Take(sheet.Document, StripDesk.Of(wear)), visit),
            _ => null,
        };
    }
}
