using System.Globalization;
using System.Text;
using Tickover.Cli.Input;
using Tickover.Instruments.Logs;
using Tickover.Workshop.Logs;

namespace Tickover.Cli.Output;

/// <summary>Logs as text.</summary>
/// <param name="width">Columns to fill at most.</param>
internal sealed class LogText(int width)
{
    private static readonly CultureInfo C = CultureInfo.InvariantCulture;

    /// <summary>Writes one log.</summary>
    /// <param name="result">The log.</param>
    /// <returns>The text.</returns>
    public string Text(LogResult result)
    {
        var text = new StringBuilder();
        var reading = result.Reading;
        WrappedText.Append(text, width, string.Empty, reading.Form.Length > 0 ? $"{result.File}: {reading.Form}." : result.File);
        if (reading.Columns.Count > 0)
        {
            Columns(text, reading);
        }

        Rows(text, reading);
        Parts(text, reading.Parts);
        if (reading.Refusal is { } refusal)
        {
            text.AppendLine();
            WrappedText.Append(text, width, string.Empty, $"Cannot be used. {refusal}{WayIn(refusal.Because)}");
        }

        if (result.Account is { } account)
        {
            Account(text, account);
        }

        return text.ToString();
    }

    private void Columns(StringBuilder text, LogReading reading)
    {
        var used = reading.Columns.Where(c => c.Quantity is not LogQuantity.Ignored).ToArray();
        text.Append(TextTable.Text(
            width,
            ["Column", "Taken for", "Unit", "Bank\t", "", "Why"],
            used.Select(c => (IReadOnlyList<string>)[c.Column, ColumnSetting.WordOf(c.Quantity), c.Unit?.Name ?? "?", c.Bank?.ToString(C) ?? string.Empty, Sureness(c.Sureness), c.Why])));
        var unused = reading.Columns.Where(c => c.Quantity is LogQuantity.Ignored).Select(c => c.Column).ToArray();
        if (unused.Length > 0)
        {
            const int most = 12;
            WrappedText.Append(text, width, string.Empty, $"Not used: {string.Join(", ", unused.Take(most))}{(unused.Length > most ? string.Create(C, $" and {unused.Length - most} more") : string.Empty)}.");
        }
    }

    // What a person says of a column is said with an option here.
    private static string WayIn(LogRefusedBecause because) => because switch
    {
        LogRefusedBecause.ColumnMissing => " A column is named with --set, such as --set \"O2 left=lambda@1:AFR 14.7\"; rows a second with --rate.",
        LogRefusedBecause.Implausible or LogRefusedBecause.NothingMoves => " A column is named with --set, such as --set \"Vac=map:mmHg vac\".",
        LogRefusedBecause.TwoEngines => " A column is put aside with --set, such as --set \"RPM 2=ignored\".",
        _ => string.Empty,
    };

    private void Rows(StringBuilder text, LogReading reading)
    {
        if (reading.Rows == 0)
        {
            return;
        }

        WrappedText.Append(text, width, string.Empty, string.Create(C, $"{reading.Rows:N0} rows, {reading.RowsKept:N0} used{(reading.RowsPerSample > 1 ? $", {reading.RowsPerSample} averaged at a time" : string.Empty)}."));
        foreach (var (head, counts) in new[] { ("Left out", reading.Dropped), ("Mended", reading.Repairs) })
        {
            if (counts.Count > 0)
            {
                WrappedText.Append(text, width, string.Empty, $"{head}: {string.Join("; ", counts.Select(d => string.Create(C, $"{d.Rows:N0} {d.What}")))}.");
            }
        }
    }

    private void Parts(StringBuilder text, IReadOnlyList<LogPart> parts)
    {
        foreach (var (part, k) in parts.Select((p, k) => (p, k + 1)))
        {
            WrappedText.Append(text, width, string.Empty, string.Create(C, $"Part {k} (--part {k}): {part.Words}."));
        }
    }

    private void Account(StringBuilder text, LogAccount account)
    {
        text.AppendLine();
        var delay = account.Delay;
        WrappedText.Append(text, width, string.Empty, delay.Found
            ? string.Create(C, $"λ lags by {delay.SlowSeconds:0.00} ± {delay.SlowSigma:0.00} s at little flow, {delay.FastSeconds:0.00} ± {delay.FastSigma:0.00} s at much; found in the log and taken off.")
            : string.Create(C, $"How far λ lags cannot be told from this log; {delay.FastSeconds:0.0} to {delay.SlowSeconds:0.0} s, as is usual, is taken off."));
        if (account is { ClosedMark: { } closed, WideMark: { } wide })
        {
            WrappedText.Append(text, width, string.Empty, string.Create(C, $"Throttle: {closed:0.0#} shut, {wide:0.0#} wide open."));
        }

        text.Append(Points(account));
        var left = account.Dropped.Select(d => string.Create(C, $"{d.Seconds:0} s {d.Why}"));
        WrappedText.Append(text, width, string.Empty, $"No points from: {string.Join("; ", left)}. Fast openings: {account.TipIns.Select(t => t.StartSeconds).Distinct().Count().ToString(C)}.");
        if (account.NoPoints is { } none)
        {
            WrappedText.Append(text, width, string.Empty, $"No points. {none}");
        }

        foreach (var doubt in account.Doubts)
        {
            WrappedText.Append(text, width, string.Empty, $"- {doubt}");
        }

        Pump(text, account.Pump);
    }

    private void Pump(StringBuilder text, LogPump pump)
    {
        text.AppendLine();
        WrappedText.Append(text, width, string.Empty, $"Accelerator pump: {pump.Words}");
        foreach (var (advice, k) in pump.Advice.Select((a, k) => (a, k + 1)))
        {
            WrappedText.Append(text, width, string.Empty, string.Create(C, $"{k}. {advice}"));
        }

        foreach (var alike in pump.Shots.GroupBy(s => s.Words, StringComparer.Ordinal))
        {
            WrappedText.Append(text, width, "  ", $"At {string.Join(", ", alike.Select(At))}: {alike.Key}");
        }
    }

    private static string At(LogShot shot) => string.Create(C, $"{shot.StartSeconds:0.0} s{(shot.Bank is { } bank ? $" (bank {bank})" : string.Empty)}");

    private string Points(LogAccount account) => TextTable.Text(
        width,
        ["Regime", "Bank\t", "rpm\t", "Throttle °\t", "kPa\t", "λ\t", "±\t", "s\t", "Doubts"],
        account.Points.OrderBy(p => p.Regime).ThenBy(p => p.Bank).ThenBy(p => p.SpeedRpm).Select(p => (IReadOnlyList<string>)
        [
            RegimeWords.Of(p.Regime),
            p.Bank?.ToString(C) ?? string.Empty,
            p.SpeedRpm.ToString("0", C),
            p.ThrottleDegrees?.ToString("0.0", C) ?? string.Empty,
            (p.ManifoldPascals / 1000)?.ToString("0.0", C) ?? string.Empty,
            p.Lambda.ToString("0.000", C),
            p.LambdaSigma.ToString("0.000", C),
            p.Seconds.ToString("0.0", C),
            string.Join("; ", p.Doubts),
        ]));

    private static string Sureness(HowSure sureness) => sureness switch
    {
        HowSure.Told => "told",
        HowSure.Sure => "sure",
        HowSure.Likely => "likely",
        _ => "guess",
    };
}
