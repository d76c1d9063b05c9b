using System.Text.Encodings.Web;
using System.Text.Json;

namespace Tickover.Instruments.Logs;

/// <summary>What the columns of one logger's files are, kept so that the next file of the same logger is read alike.</summary>
public sealed record LogLayout
{
    private static readonly JsonSerializerOptions Form = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The headings a file must have, in their order, put together by <see cref="KeyOf"/>.</summary>
    public required string Key { get; init; }

    /// <summary>The columns.</summary>
    public required IReadOnlyList<RememberedColumn> Columns { get; init; }

    /// <summary>The key of a row of headings: trimmed, in small letters, with bars between.</summary>
    /// <param name="headings">The headings.</param>
    /// <returns>The key.</returns>
    public static string KeyOf(IEnumerable<string> headings) => string.Join('|', headings.Select(h => h.Trim().ToLowerInvariant()));

    /// <summary>The layout to remember of what a person told: the other columns are found again in each file, since a pick-up or a unit may differ from car to car.</summary>
    /// <param name="columns">All columns of the file, in order.</param>
    /// <returns>The layout; null where nothing was told.</returns>
    public static LogLayout? Of(IReadOnlyList<ColumnChoice> columns) =>
        columns.Any(c => c.Sureness is HowSure.Told)
            ? new()
            {
                Key = KeyOf(columns.Select(c => c.Column)),
                Columns = [.. columns.Where(c => c.Sureness is HowSure.Told).Select(c => new RememberedColumn(c.Column, c.Quantity.ToString(), c.Unit?.Name ?? string.Empty, c.Bank, c.Index + 1))],
            }
            : null;

    /// <summary>Reads a layout written by <see cref="ToText"/>.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The layout; null where the text is none.</returns>
    public static LogLayout? Read(string text)
    {
        try
        {
            return JsonSerializer.Deserialize<LogLayout>(text, Form);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>The layout as JSON.</summary>
    /// <returns>The text.</returns>
    public string ToText() => JsonSerializer.Serialize(this, Form);

    /// <summary>The columns as choices; what cannot be read any more is left to be found again.</summary>
    internal IEnumerable<ColumnChoice> Choices() =>
        from column in Columns
        where Enum.TryParse<LogQuantity>(column.Quantity, out _)
        let quantity = Enum.Parse<LogQuantity>(column.Quantity)
        select new ColumnChoice
        {
            Column = column.Column,
            Index = column.Place - 1,
            Quantity = quantity,
            Unit = LogUnits.Find(quantity, column.Unit),
            Bank = column.Bank,
            Sureness = HowSure.Told,
            Why = "remembered from an earlier log with the same headings",
        };
}
