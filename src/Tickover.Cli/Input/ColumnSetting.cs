using System.Globalization;
using Tickover.Instruments.Logs;

namespace Tickover.Cli.Input;

/// <summary>Reads what a person says a column is: COLUMN=QUANTITY:UNIT, a bank behind the quantity as in lambda@2.</summary>
internal static class ColumnSetting
{
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

    /// <summary>Reads it.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The column told, or what is wrong.</returns>
    public static Answer<ColumnChoice> Read(string text)
    {
        var equals = text.LastIndexOf('=');
        if (equals < 1 || equals == text.Length - 1)
        {
            return Answer<ColumnChoice>.No($"'{text}' is no COLUMN=QUANTITY:UNIT, such as \"vac1=map:mmHg vac\" or \"O2=ignored\".");
        }

        var (column, rest) = (text[..equals].Trim(), text[(equals + 1)..].Trim());
        var colon = rest.IndexOf(':', StringComparison.Ordinal);
        var (word, unitText) = colon < 0 ? (rest, string.Empty) : (rest[..colon].Trim(), rest[(colon + 1)..].Trim());
        var at = word.IndexOf('@', StringComparison.Ordinal);
        var (name, bankText) = at < 0 ? (word, string.Empty) : (word[..at], word[(at + 1)..]);
        var known = Array.Find(Words, w => string.Equals(w.Word, name, StringComparison.OrdinalIgnoreCase));
        if (known.Word is null)
        {
            return Answer<ColumnChoice>.No($"'{name}' is no quantity of a log. There are: {string.Join(", ", Words.Select(w => w.Word))}.");
        }

        if (at >= 0 && !(int.TryParse(bankText, NumberStyles.None, CultureInfo.InvariantCulture, out var b) && b > 0))
        {
            return Answer<ColumnChoice>.No($"'{bankText}' is no bank. Count from 1, such as lambda@2.");
        }

        return WithUnit(new ColumnChoice { Column = column, Quantity = known.Quantity, Bank = at < 0 ? null : int.Parse(bankText, CultureInfo.InvariantCulture), Sureness = HowSure.Told }, unitText);
    }

    private static Answer<ColumnChoice> WithUnit(ColumnChoice told, string unitText)
    {
        var unit = unitText.Length == 0 ? null : LogUnits.Find(told.Quantity, unitText);
        return unit is null && unitText.Length > 0
            ? Answer<ColumnChoice>.No($"'{unitText}' is no unit of {WordOf(told.Quantity)}. There are: {string.Join(", ", LogUnits.NamesOf(told.Quantity))}.")
            : told with { Unit = unit };
    }
}
