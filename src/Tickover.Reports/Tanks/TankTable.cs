using System.Globalization;
using Tickover.Workshop.Tanks;

namespace Tickover.Reports.Tanks;

/// <summary>The figures of tanks as tables.</summary>
public static class TankTable
{
    private const string None = "–";

    /// <summary>The strapping table first; then reach, fill, faults and cures, as far as there are any.</summary>
    /// <param name="analysis">The tanks.</param>
    /// <returns>The tables.</returns>
    public static IReadOnlyList<PictureTable> Of(TankAnalysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        return [.. new[] { Strapping(analysis), Reach(analysis), Fill(analysis), Faults(analysis), Cures(analysis) }.Where(t => t.Rows.Count > 0)];
    }

    private static PictureTable Strapping(TankAnalysis a)
    {
        var isSeveral = a.Set.Tanks.Count > 1;
        return new PictureTable(
            a.IsNeedleRead ? "Strapping table, car level; ohms and needle as read" : "Strapping table, car level",
            ["Litres", .. isSeveral ? a.Set.Tanks.SelectMany(t => new[] { $"{t.Name}, l", $"{t.Name}, dip mm" }) : ["Dip, mm"], "Ohms", "Needle"],
            [.. a.Table.Select(string[] (r) =>
            [
                Line($"{r.Litres:0.#}"),
                .. r.Tanks.SelectMany(t => isSeveral ? new[] { Line($"{t.Litres:0.0}"), Line($"{t.DipMillimetres:0}") } : [Line($"{t.DipMillimetres:0}")]),
                r.Ohms is { } ohms ? Line($"{ohms:0}") : None,
                Needle(r.Needle),
            ])]);
    }

    private static PictureTable Reach(TankAnalysis a) => new(
        "Fuel left in all tanks when the pick-up draws air",
        ["Car", "Litres", "Needle then"],
        a.UnusableLitres is not { } level ? [] : [["level", Line($"{level:0.0}"), None], .. a.Stances.Select(string[] (s) => [s.Stance.Name, s.UnusableLitres is { } l ? Line($"{l:0.0}") : None, Needle(s.NeedleThen)])]);

    private static PictureTable Fill(TankAnalysis a) => new(
        "Fill against shape",
        ["Poured, l", "Dip read, mm", "As drawn", "Set right", "Fuel by the dip, l", "It"],
        a.Fill is not { } fill ? [] : [.. FillRow.Of(fill).Select(string[] (r) =>
        [
            Line($"{r.Litres:0.#}"), Line($"{r.DipMillimetres:0}"), Line($"{r.DrawnMillimetres:0}"), Line($"{r.FittedMillimetres:0}"), Line($"{r.FuelLitres:0.0} ±{r.BandLitres:0.0}"),
            r.StandsOut ? "stands out" : "fits",
        ])]);

    private static PictureTable Faults(TankAnalysis a) => new(
        "Sender and gauge: how likely each is",
        ["Fault", "Probability"],
        a.Sender is not { } sender ? [] : [.. sender.Diagnosis.Faults.Where(f => f.Probability >= 0.01).Select(string[] (f) => [SenderFaultWords.Name(f.Fault), Line($"{100 * f.Probability:0} %")])]);

    private static PictureTable Cures(TankAnalysis a) => new(
        "Cures, and the error each leaves, of the scale",
        ["Cure", "On average", "At worst"],
        a.Sender is not { } sender ? [] : [.. sender.Cures.Select(string[] (c) => [GaugeCureWords.What(c), Line($"{100 * c.RootMeanSquare:0} %"), Line($"{100 * Math.Abs(c.Worst.Error):0} %")])]);

    private static string Needle(double? needle) => needle switch
    {
        null => None,
        < 0 => "below E",
        > 1 => "past F",
        { } n => Line($"{100 * n:0} %"),
    };

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
