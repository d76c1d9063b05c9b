using System.Globalization;
using Tickover.Reports.Paper;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>10: when to look again. Common practice of the trade: settling of joints and screws shows within the first hundred miles.</summary>
internal static class ChecksPart
{
    private static readonly (int Miles, int Kilometres, string Look)[] Looks =
    [
        (100, 150, "Drips and smell, hose clips, base nuts, adjusting screws against their paint marks."),
        (300, 500, "The same again, the fuel filter for dirt out of the tanks, the plugs."),
        (1000, 1500, "Balance of the barrels, idle mixture, filters; a new round is put beside the figures of this visit."),
    ];

    internal static IEnumerable<Block> Of(Telling t)
    {
        yield return new Heading(2, t.Say("When to look again"));
        var columns = t.Visit.OdometerOut is null ? new[] { new Column("After"), new Column("What is looked at") } : [new Column("After"), Column.OfFigures("Odometer shows"), new Column("What is looked at")];
        yield return t.TableOr("", "Checks to come", columns, [.. Looks.Select(l => Row(t, l))]);
        yield return t.Note("After that each spring, or after a winter standing. These distances are common practice, not a maker\u2019s figure.");
    }

    private static IReadOnlyList<Prose> Row(Telling t, (int Miles, int Kilometres, string Look) look)
    {
        var way = t.Record.Car.OdometerUnit == OdometerUnit.Miles ? look.Miles : look.Kilometres;
        var after = Prose.Bold($"{way.ToString("#,0", CultureInfo.InvariantCulture)}\u00a0{t.WayUnit}");
        return t.Visit.OdometerOut is { } gone ? [after, Prose.Of((gone + way).ToString("#,0", CultureInfo.InvariantCulture)), t.Prose(look.Look)] : [after, t.Prose(look.Look)];
    }
}
