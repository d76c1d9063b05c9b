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
    private readonly IReadOnlyList<IntakeKind> _kinds = [.. walls.Intake.Kinds, .. gauges.Intake.Kinds, .. strip.Intake.Kinds];

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
        return _kinds.FirstOrDefault(kind => string.Equals(kind.Format, sheet.Form, StringComparison.Ordinal))?.Take(sheet.Document, visit).Page;
    }
}
