using System.Globalization;
using System.Text;
using Tickover.Instruments.Logs.Columns;
using Tickover.Instruments.Logs.Text;

namespace Tickover.Instruments.Logs;

/// <summary>Reads logs as they really are: finds table, columns and units, mends the clock and the pick-up, and says all it did.</summary>
/// <remarks>
/// The file is gone through once and need not be one that can be gone back in. In memory are the first megabyte, one block of lines, and the columns used as
/// 32-bit figures with a 64-bit time. Nothing in a file makes it throw; only a cancelled token does. docs/logs.md tells how each thing is judged.
/// </remarks>
public static class LogReader
{
    private const int HeadBytes = 1 << 20;

    /// <summary>Reads a log.</summary>
    /// <param name="stream">The bytes; read to their end, not closed.</param>
    /// <param name="settings">What is known beforehand; null for nothing.</param>
    /// <param name="progress">Told how far it is; null for nobody.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The log, or why there is none.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static LogReading Read(Stream stream, LogReadingSettings? settings = null, IProgress<LogProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(stream);
        settings ??= new LogReadingSettings();
        try
        {
            var head = CountedStream.Head(stream, HeadBytes);
            return ReadHead(head, stream, settings, progress, cancellation);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException or DecoderFallbackException)
        {
            return Refused(LogRefusedBecause.Unreadable, $"The file cannot be read to its end: {e.Message}", "Copy it again from the logger.");
        }
    }

    private static LogReading ReadHead(ReadOnlyMemory<byte> head, Stream rest, LogReadingSettings settings, IProgress<LogProgress>? progress, CancellationToken cancellation)
    {
        if (head.IsEmpty)
        {
            return Refused(LogRefusedBecause.Empty, "The file is empty.", "Copy it again from the logger.");
        }

        if (TextKind.Of(head.Span) is not { } kind)
        {
            return TextKind.IsPacked(head.Span)
                ? Refused(LogRefusedBecause.NotText, "The file is a spreadsheet or an archive, not text.", "Open it and save the sheet as CSV, or unpack it.")
                : Refused(LogRefusedBecause.NotText, "The file is not text.", "Export the log as CSV with the logger's own program.");
        }

        var text = kind.Encoding.GetString(head.Span).TrimStart('\uFEFF');
        if (string.IsNullOrWhiteSpace(text))
        {
            return Refused(LogRefusedBecause.Empty, "There is nothing in the file but blanks.", "Copy it again from the logger.");
        }

        cancellation.ThrowIfCancellationRequested();
        var form = kind.Name;
        return TableFinder.Find(text) is not { } shape
            ? Refused(LogRefusedBecause.NoTable, "There is no table of figures in the file.", "A log has a row for every moment with time, engine speed, λ or AFR, and throttle or manifold pressure.", form)
            : ReadTable(new CountedStream(head, rest), kind, shape, settings, progress, cancellation);
    }

    private static LogReading ReadTable(CountedStream stream, TextKind kind, TableShape shape, LogReadingSettings settings, IProgress<LogProgress>? progress, CancellationToken cancellation)
    {
        var finder = new ColumnFinder(shape, settings);
        var columns = finder.Find();
        var seen = new LogReading { Form = FormOf(kind, shape), Columns = columns };
        if (Refusals.BeforeReading(shape, columns, finder.Unknown(), settings) is { } refusal)
        {
            return seen with { Refusal = refusal };
        }

        var rows = new RowReader(shape, columns, settings);
        using var text = new StreamReader(stream, kind.Encoding, detectEncodingFromByteOrderMarks: true, bufferSize: 1 << 16, leaveOpen: true);
        using var tidy = new LineTidier(text);
        using var reader = RowSplitter.Open(tidy, shape.Separator);
        var clock = columns.FirstOrDefault(c => c.Quantity is LogQuantity.Time) is { } time && IsClock(shape, time.Index);
        var table = rows.Read(reader, clock, n => progress?.Report(new LogProgress(stream.Count, n)), cancellation);
        progress?.Report(new LogProgress(stream.Count, rows.Rows));
        seen = seen with { Rows = rows.Rows, RowsKept = table.RowsKept, RowsPerSample = table.RowsPerSample, Dropped = DroppedBy(rows), Repairs = RepairsBy(tidy) };
        return rows.AnotherTableAt > 0
            ? seen with { Refusal = Refusals.AnotherTable(rows.AnotherTableAt) }
            : new LogAssembly(shape, settings, table, rows.Used, clock).Finish(seen);
    }

    private static bool IsClock(TableShape shape, int index)
    {
        var sample = SampleColumn.Of(shape, index);
        return sample.Clocks > sample.Figures;
    }

    private static LogCount[] DroppedBy(RowReader rows) =>
        [.. Enum.GetValues<RowFate>().Where(f => f is not RowFate.Kept && rows.Of(f) > 0).Select(f => new LogCount(RowFateWords.Of(f), rows.Of(f)))];

    private static LogCount[] RepairsBy(LineTidier tidy) =>
        [.. new LogCount[] { new("quotation mark left open (taken off)", tidy.OpenQuotes), new("line without an end (cut)", tidy.CutLines) }.Where(c => c.Rows > 0)];

    private static string FormOf(TextKind kind, TableShape shape)
    {
        var separator = shape.Separator switch { ';' => "semicolons", '\t' => "tabs", ',' => "commas", _ => "bars" };
        var mark = shape.Mark == ',' ? "decimal comma" : "decimal point";
        var headings = shape.HeadingRow < 0 ? "no headings" : string.Create(CultureInfo.InvariantCulture, $"headings in row {shape.HeadingRow + 1}");
        var units = shape.UnitsRow < 0 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $", units in row {shape.UnitsRow + 1}");
        return $"{kind.Name}, {separator}, {mark}, {headings}{units}";
    }

    private static LogReading Refused(LogRefusedBecause because, string missing, string whatWouldDo, string form = "") =>
        new() { Refusal = new LogRefusal(because, missing, whatWouldDo), Form = form };
}
