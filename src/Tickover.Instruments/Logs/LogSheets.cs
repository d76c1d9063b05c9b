using Tickover.Workshop.Logs;

namespace Tickover.Instruments.Logs;

/// <summary>Makes the sheet that is kept with a run of what a reading saw.</summary>
internal static class LogSheets
{
    private const int UnusedShown = 24;
    private const int FurtherNamed = 1_000;

    internal static LogSheet Of(LogReading reading, LogHints hints)
    {
        var shown = reading.Columns.Where(c => c.Quantity is not LogQuantity.Ignored || c.Sureness is HowSure.Told)
            .Concat(reading.Columns.Where(c => c.Quantity is LogQuantity.Ignored && c.Sureness is not HowSure.Told).OrderBy(c => c.Least is null).Take(UnusedShown))
            .Select(c => c.Index).ToHashSet();
        var layout = LogLayout.Of(reading.Columns);
        return new LogSheet
        {
            Form = reading.Form,
            Columns = [.. reading.Columns.Where(c => shown.Contains(c.Index)).Select(Column)],
            FurtherColumns = [.. reading.Columns.Where(c => !shown.Contains(c.Index)).Take(FurtherNamed).Select(c => c.Column)],
            Rows = reading.Rows,
            RowsKept = reading.RowsKept,
            LeftOut = [.. reading.Dropped.Select(d => new LogRows(d.What, d.Rows))],
            Mended = [.. reading.Repairs.Select(d => new LogRows(d.What, d.Rows))],
            RowsPerSecond = hints.RowsPerSecond,
            Parts = reading.Parts,
            PartTaken = hints.Part,
            Layout = layout?.ToText() ?? string.Empty,
            LayoutKey = reading.Columns.Count == 0 ? string.Empty : LogLayout.KeyOf(reading.Columns.Select(c => c.Column)),
        };
    }

    private static LogColumn Column(ColumnChoice choice) => new()
    {
        Name = choice.Column,
        Place = choice.Index + 1,
        Taken = ColumnWords.CodeOf(choice),
        Unit = choice.Quantity is LogQuantity.Ignored ? string.Empty : choice.Unit?.Name ?? string.Empty,
        IsTold = choice.Sureness is HowSure.Told,
        Sureness = ColumnWords.WordOf(choice.Sureness),
        Why = choice.Why,
        Cells = choice.Seen,
        Least = choice.Least,
        Most = choice.Most,
    };
}
