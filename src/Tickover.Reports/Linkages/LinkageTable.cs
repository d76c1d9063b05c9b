using System.Globalization;
using Tickover.Workshop.Linkages;

namespace Tickover.Reports.Linkages;

/// <summary>The picture of a linkage as a table: a row for every tenth of the travel.</summary>
public static class LinkageTable
{
    private const int EachOf = 4;

    /// <summary>Makes the table.</summary>
    /// <param name="view">What the picture shows.</param>
    /// <returns>The table, pedal up first.</returns>
    public static PictureTable Of(LinkageView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return new PictureTable(
            $"{view.Analysis.Linkage.Name}: angle of the plates, and air against the mean by their gaps",
            ["Pedal down", .. view.Analysis.Names, "Limit"],
            [.. view.Course.Where((_, i) => i % EachOf == 0).Select(Row)]);
    }

    private static string[] Row(LinkageMoment moment) =>
    [
        Shown.Percent(moment.Down),
        .. moment.Plates.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Degrees:0.0}°, {(p.DeviationPart >= 0.005 ? "+" : "")}{Shown.Percent(p.DeviationPart)}")),
        "±" + Shown.Percent(moment.LimitPart),
    ];
}
