using System.Globalization;

namespace Tickover.Physics.Supply;

/// <summary>Sentences about figures that cannot be reckoned with.</summary>
internal static class SupplyText
{
    public static IEnumerable<string> NotAboveZero(string part, string what, double value) =>
        double.IsFinite(value) && value > 0 ? [] : [Say(part, what, value, "it must be above zero")];

    public static IEnumerable<string> Negative(string part, string what, double value) =>
        double.IsFinite(value) && value >= 0 ? [] : [Say(part, what, value, "it must not be below zero")];

    public static IEnumerable<string> OutOf(string part, string what, double value, double minimum, double maximum) =>
        value >= minimum && value <= maximum
            ? []
            : [Say(part, what, value, string.Create(CultureInfo.InvariantCulture, $"it must lie between {minimum} and {maximum}"))];

    private static string Say(string part, string what, double value, string rule) =>
        string.Create(CultureInfo.InvariantCulture, $"{part}: the {what} is {value}; {rule}.");
}
