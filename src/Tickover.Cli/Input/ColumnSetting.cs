using Tickover.Instruments.Logs;

namespace Tickover.Cli.Input;

/// <summary>Reads what a person says a column is: COLUMN=QUANTITY:UNIT, a bank behind the quantity as in lambda@2.</summary>
internal static class ColumnSetting
{
    /// <summary>The word for a quantity.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <returns>Such as "map".</returns>
    public static string WordOf(LogQuantity quantity) => ColumnWords.WordOf(quantity);

    /// <summary>Reads it.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The column told, or what is wrong.</returns>
    public static Answer<ColumnChoice> Read(string text)
    {
        var (told, complaint) = ColumnWords.Read(text);
        return told is null ? Answer<ColumnChoice>.No(complaint) : told;
    }
}
