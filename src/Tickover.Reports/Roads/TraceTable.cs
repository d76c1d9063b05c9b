using System.Globalization;
using Tickover.Workshop.Logs;

namespace Tickover.Reports.Roads;

/// <summary>The picture of a road log as a table: a row for every stretch, opening and span left out.</summary>
public static class TraceTable
{
    /// <summary>Makes the table.</summary>
    /// <param name="view">What the picture shows.</param>
    /// <returns>The table, in order of time.</returns>
    public static PictureTable Of(TraceView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var rows = view.Points.GroupBy(p => p.StartSeconds).Select(g => (g.Key, Row(view, [.. g])))
            .Concat(view.Trace.TipInSeconds.Select(t => (Key: t, Row: Blank(t, "throttle opened fast", null, view))))
            .Concat(view.Trace.LeftOut.Select(l => (Key: l.StartSeconds, Row: Blank(l.StartSeconds, $"left out: {l.Why}", l.EndSeconds - l.StartSeconds, view))))
            .OrderBy(r => r.Item1)
            .Select(r => r.Item2);
        return new PictureTable(
            $"Road log {view.Name}",
            ["At", "For", "What", "rpm", "Throttle", .. view.Trace.Lambdas.Select(Heading)],
            [.. rows]);
    }

    private static string Heading(LogTraceLambda lambda) => lambda.Bank is { } bank ? string.Create(CultureInfo.InvariantCulture, $"λ, bank {bank}") : "λ";

    private static string[] Row(TraceView view, MixturePoint[] points)
    {
        var first = points[0];
        return
        [
            TraceTime.Words(first.StartSeconds),
            For(first.Seconds),
            RegimeNames.Of(first.Regime),
            Shown.Speed(first.SpeedRpm),
            first.ThrottleDegrees is { } degrees ? Shown.Opening(degrees) : Shown.Nothing,
            .. view.Trace.Lambdas.Select(l => points.FirstOrDefault(p => p.Bank == l.Bank || view.Trace.Lambdas.Count == 1) is { } point ? Shown.Lambda(point.Lambda) : Shown.Nothing),
        ];
    }

    private static string[] Blank(double at, string what, double? seconds, TraceView view) =>
        [TraceTime.Words(at), seconds is { } s ? For(s) : "", what, "", "", .. view.Trace.Lambdas.Select(_ => "")];

    private static string For(double seconds) => Shown.WithUnit(seconds.ToString("0", CultureInfo.InvariantCulture), "s");
}
