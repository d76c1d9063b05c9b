using System.Globalization;
using System.Runtime.CompilerServices;

namespace Tickover.Physics;

/// <summary>Checks of what is put into a model; a breach is a broken contract, never something a user typed.</summary>
internal static class Precondition
{
    public static double Finite(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) ? value : throw Breach(name, value, "finite");

    public static double Positive(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) && value > 0 ? value : throw Breach(name, value, "finite and above zero");

    public static double NotNegative(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) && value >= 0 ? value : throw Breach(name, value, "finite and not below zero");

    public static double Within(double value, double minimum, double maximum, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        value >= minimum && value <= maximum
            ? value
            : throw Breach(name, value, string.Create(CultureInfo.InvariantCulture, $"between {minimum} and {maximum}"));

    private static ArgumentOutOfRangeException Breach(string? name, double value, string allowed) =>
        new(name, value, string.Create(CultureInfo.InvariantCulture, $"{name} was {value}; it must be {allowed}."));
}
