using System.Text.Json;
using Tickover.Cli.Input;
using Tickover.Cli.Json;
using Tickover.Workshop.Logs;

namespace Tickover.Cli.Output;

/// <summary>Logs as JSON.</summary>
internal static class LogJson
{
    /// <summary>Writes the document.</summary>
    /// <param name="car">The car's name.</param>
    /// <param name="results">The logs.</param>
    /// <returns>The text.</returns>
    public static string Text(string car, IReadOnlyList<LogResult> results) =>
        JsonSerializer.Serialize(new LogDocument { Car = car, Logs = [.. results.Select(Of)] }, CommandJson.Readable.LogDocument) + Environment.NewLine;

    private static LoggedFile Of(LogResult result)
    {
        var reading = result.Reading;
        var file = new LoggedFile
        {
            File = result.File,
            Refused = reading.Refusal?.ToString(),
            RefusedBecause = reading.Refusal?.Because.ToString(),
            Form = reading.Form,
            Columns = [.. reading.Columns.Select(c => new LoggedColumn(c.Column, ColumnSetting.WordOf(c.Quantity), c.Unit?.Name, c.Bank, c.Sureness.ToString(), c.Why, c.Seen, c.Least, c.Most))],
            Rows = reading.Rows,
            RowsKept = reading.RowsKept,
            RowsPerSample = reading.RowsPerSample,
            Dropped = [.. reading.Dropped.Select(d => new LoggedCount(d.What, d.Rows))],
            Parts = [.. reading.Parts.Select(p => new LoggedPart(Round(p.StartSeconds, 1), Round(p.EndSeconds, 1), p.Words))],
            Repairs = [.. reading.Repairs.Select(d => new LoggedCount(d.What, d.Rows))],
            Points = [],
            Stretches = [],
            TipIns = [],
            LeftOut = [],
            Doubts = [],
        };
        return result.Account is { } account ? With(file, account) : file;
    }

    private static LoggedFile With(LoggedFile file, LogAccount account) => file with
    {
        Delay = Of(account.Delay),
        ThrottleMarks = account is { ClosedMark: { } closed, WideMark: { } wide } ? [Round(closed, 3), Round(wide, 3)] : null,
        Points = [.. account.Points.Select(Of)],
        Stretches = [.. account.Stretches.Select(s => new LoggedStretch(Round(s.StartSeconds, 2), Round(s.EndSeconds, 2), RegimeWords.Of(s.Regime)))],
        TipIns = [.. account.TipIns.Select(t => Round(t.StartSeconds, 2)).Distinct()],
        Pump = new LoggedPump(
            account.Pump.Verdict?.ToString(),
            account.Pump.Words,
            account.Pump.Advice,
            [.. account.Pump.Shots.Select(s => new LoggedShot(s.StartSeconds, s.Bank, s.Verdict.ToString(), s.Words, s.Advice, s.Open))]),
        LeftOut = [.. account.Dropped.Select(d => new LoggedTime(d.Why, d.Seconds))],
        Doubts = account.Doubts,
    };

    private static LoggedDelay Of(LogDelay delay) => new(
        delay.Found, Round(delay.FixedSeconds, 3), Round(delay.PipeKilograms, 5), Round(delay.SlowSeconds, 3), Round(delay.SlowSigma, 3), Round(delay.FastSeconds, 3), Round(delay.FastSigma, 3));

    private static LoggedPoint Of(Workshop.Logs.MixturePoint point) => new(
        point.Bank,
        RegimeWords.Of(point.Regime),
        Round(point.SpeedRpm, 1),
        point.ThrottleDegrees is { } degrees ? Round(degrees, 2) : null,
        point.ManifoldPascals is { } pascals ? Round(pascals, 0) : null,
        Round(point.Lambda, 4),
        Round(point.LambdaSigma, 4),
        point.Count,
        Round(point.StartSeconds, 2),
        Round(point.Seconds, 2),
        point.Doubts);

    private static double Round(double value, int digits) => Math.Round(value, digits);
}
