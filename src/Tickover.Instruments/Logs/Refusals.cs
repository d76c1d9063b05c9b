using System.Globalization;
using Tickover.Instruments.Logs.Columns;
using Tickover.Instruments.Logs.Text;
using Tickover.Workshop.Logs;

namespace Tickover.Instruments.Logs;

/// <summary>Why a log cannot be used, in words with a way out.</summary>
internal static class Refusals
{
    private const double MoreCells = 1.4;                // cells over headings, where commas part figures too

    /// <summary>What can be said before the rows are gone through.</summary>
    internal static LogRefusal? BeforeReading(TableShape shape, IReadOnlyList<ColumnChoice> columns, IReadOnlyList<string> unknown, LogReadingSettings settings)
    {
        if (unknown.Count > 0)
        {
            return new(LogRefusedBecause.ColumnUnknown, $"There is no column '{unknown[0]}'.", $"The columns are: {Listed(shape.Headings)}.");
        }

        if (shape is { Separator: ',', Mark: '.', HeadingRow: >= 0 } && shape.Width >= MoreCells * Math.Max(3, HeadingsOf(shape)))
        {
            return new(
                LogRefusedBecause.CommasBetweenCommas,
                string.Create(CultureInfo.InvariantCulture, $"There are {HeadingsOf(shape)} headings over {shape.Width} cells: decimal commas stand between commas, and nothing tells them apart."),
                "Export again with semicolons between the columns or with decimal points.");
        }

        return Missing(columns, settings) is { Count: > 0 } missing
            ? new(LogRefusedBecause.ColumnMissing, $"No column was found for {string.Join(" and ", missing)}.", $"If it is there under another heading ({Listed(shape.Headings)}), say which; otherwise log it.")
            : null;
    }

    internal static LogRefusal AnotherTable(long row) => new(
        LogRefusedBecause.TwoEngines,
        string.Create(CultureInfo.InvariantCulture, $"At row {row} another table with other headings begins: the file holds two logs, perhaps of two engines."),
        "Cut it in two there and read each by itself.");

    internal static LogRefusal TwoEngines(string first, string second) => new(
        LogRefusedBecause.TwoEngines,
        $"'{first}' and '{second}' are both engine speeds and do not go together: two engines in one file.",
        $"Say which is this car's: take '{first}' or '{second}' for not used, and see that mixture and throttle are that engine's too.");

    internal static LogRefusal NoSuchPart(int part, IReadOnlyList<LogPart> parts) => new(
        LogRefusedBecause.TwoEngines,
        string.Create(CultureInfo.InvariantCulture, $"There is no part {part} in the file."),
        parts.Count == 0 ? "It is of one piece: take the whole." : $"The parts are: {string.Join("; ", parts.Select((p, k) => string.Create(CultureInfo.InvariantCulture, $"{k + 1} is {p.Words}")))}.");

    internal static LogRefusal NoRows() => new(
        LogRefusedBecause.NoTable, "Hardly a row holds a time with engine speed and mixture.", "Log at least a minute with the engine running and the λ sensor warm.");

    internal static LogRefusal Stands(string what, string column) => new(
        LogRefusedBecause.NothingMoves,
        $"The {what} in '{column}' is the same in every row.",
        what is "engine speed" ? "Check the pick-up or take another column." : "The sensor, its heater or the channel is stuck: mend that and log again, or name another column.");

    internal static LogRefusal Implausible(ColumnChoice column) => new(
        LogRefusedBecause.Implausible,
        $"'{column.Column}' cannot be {ColumnFinder.Words(column.Quantity)}: {column.Why}.",
        $"Say its unit ({Listed(LogUnits.NamesOf(column.Quantity))}), or take another column; a sensor's volts have to be logged as λ or AFR.");

    private static List<string> Missing(IReadOnlyList<ColumnChoice> columns, LogReadingSettings settings)
    {
        var missing = new List<string>();
        if (!Has(columns, LogQuantity.Time) && settings.RowsPerSecond is not > 0)
        {
            missing.Add("time (or say how many rows a second there are)");
        }

        if (!Has(columns, LogQuantity.EngineSpeed))
        {
            missing.Add("engine speed");
        }

        if (!Has(columns, LogQuantity.Lambda))
        {
            missing.Add("λ or AFR");
        }

        if (!Has(columns, LogQuantity.Throttle) && !Has(columns, LogQuantity.ManifoldPressure))
        {
            missing.Add("throttle or manifold pressure");
        }

        return missing;
    }

    private static bool Has(IReadOnlyList<ColumnChoice> columns, LogQuantity quantity) => columns.Any(c => c.Quantity == quantity);

    private static int HeadingsOf(TableShape shape) => shape.Headings.Count(h => !h.StartsWith('#'));

    private static string Listed(IReadOnlyList<string> names)
    {
        const int most = 20;
        return string.Join(", ", names.Take(most)) + (names.Count > most ? string.Create(CultureInfo.InvariantCulture, $" and {names.Count - most} more") : string.Empty);
    }
}
