using System.Globalization;
using Tickover.Instruments.Logs.Columns;
using Tickover.Workshop.Logs;

namespace Tickover.Instruments.Logs;

/// <summary>What a column is, as a person writes it: COLUMN=QUANTITY:UNIT, a bank behind the quantity as in lambda@2.</summary>
public static class ColumnWords
{
    private const int MostBanks = 2;

    private static readonly (string Word, LogQuantity Quantity)[] Words =
    [
        ("ignored", LogQuantity.Ignored), ("time", LogQuantity.Time), ("rpm", LogQuantity.EngineSpeed), ("throttle", LogQuantity.Throttle),
        ("map", LogQuantity.ManifoldPressure), ("lambda", LogQuantity.Lambda), ("coolant", LogQuantity.CoolantTemperature), ("oil", LogQuantity.OilTemperature),
        ("air", LogQuantity.AirTemperature), ("fuelpressure", LogQuantity.FuelPressure), ("speed", LogQuantity.RoadSpeed),
    ];

    /// <summary>The word for a quantity.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <returns>Such as "map".</returns>
    public static string WordOf(LogQuantity quantity) => Words.First(w => w.Quantity == quantity).Word;

    /// <summary>What a column was taken for, without its unit.</summary>
    /// <param name="column">The column.</param>
    /// <returns>Such as "lambda@2".</returns>
    public static string CodeOf(ColumnChoice column)
    {
        ArgumentNullException.ThrowIfNull(column);
        return column is { Quantity: LogQuantity.Lambda, Bank: { } bank } ? string.Create(CultureInfo.InvariantCulture, $"lambda@{bank}") : WordOf(column.Quantity);
    }

    /// <summary>How sure a choice is, in a word.</summary>
    /// <param name="sureness">How sure.</param>
    /// <returns>Such as "likely".</returns>
    public static string WordOf(HowSure sureness) => sureness switch
    {
        HowSure.Told => "told",
        HowSure.Sure => "sure",
        HowSure.Likely => "likely",
        _ => "guess",
    };

    /// <summary>What a column can be taken for, the usual ones first.</summary>
    /// <returns>The meanings with their units.</returns>
    public static IReadOnlyList<LogMeaning> Meanings() =>
    [
        .. from word in Words
           from bank in word.Quantity is LogQuantity.Lambda ? Enumerable.Range(0, MostBanks + 1) : [0]
           select new LogMeaning(
               bank == 0 ? word.Word : string.Create(CultureInfo.InvariantCulture, $"{word.Word}@{bank}"),
               word.Quantity is LogQuantity.Ignored ? "not used"
                   : word.Quantity is not LogQuantity.Lambda ? ColumnFinder.Words(word.Quantity)
                   : bank == 0 ? "mixture, whole engine" : string.Create(CultureInfo.InvariantCulture, $"mixture, bank {bank}"),
               LogUnits.NamesOf(word.Quantity)),
    ];

    /// <summary>Reads it.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The column told, or what is wrong: a sentence.</returns>
    public static (ColumnChoice? Told, string Complaint) Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var equals = text.LastIndexOf('=');
        if (equals < 1 || equals == text.Length - 1)
        {
            return (null, $"'{text}' is no COLUMN=QUANTITY:UNIT, such as \"vac1=map:mmHg vac\" or \"O2=ignored\".");
        }

        var (column, rest) = (text[..equals].Trim(), text[(equals + 1)..].Trim());
        var colon = rest.IndexOf(':', StringComparison.Ordinal);
        var (word, unitText) = colon < 0 ? (rest, string.Empty) : (rest[..colon].Trim(), rest[(colon + 1)..].Trim());
        var at = word.IndexOf('@', StringComparison.Ordinal);
        var (name, bankText) = at < 0 ? (word, string.Empty) : (word[..at], word[(at + 1)..]);
        var known = Array.Find(Words, w => string.Equals(w.Word, name, StringComparison.OrdinalIgnoreCase));
        if (known.Word is null)
        {
            return (null, $"'{name}' is no quantity of a log. There are: {string.Join(", ", Words.Select(w => w.Word))}.");
        }

        return at >= 0 && !(int.TryParse(bankText, NumberStyles.None, CultureInfo.InvariantCulture, out var b) && b > 0)
            ? (null, $"'{bankText}' is no bank. Count from 1, such as lambda@2.")
            : WithUnit(new ColumnChoice { Column = column, Quantity = known.Quantity, Bank = at < 0 ? null : int.Parse(bankText, CultureInfo.InvariantCulture), Sureness = HowSure.Told }, unitText);
    }

    private static (ColumnChoice? Told, string Complaint) WithUnit(ColumnChoice told, string unitText)
    {
        var unit = unitText.Length == 0 ? null : LogUnits.Find(told.Quantity, unitText);
        return unit is null && unitText.Length > 0
            ? (null, $"'{unitText}' is no unit of {WordOf(told.Quantity)}. There are: {string.Join(", ", LogUnits.NamesOf(told.Quantity))}.")
            : (told with { Unit = unit }, string.Empty);
    }
}
