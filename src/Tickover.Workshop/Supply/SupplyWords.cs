using Tickover.Physics.Supply;
using static Tickover.Workshop.Mixture.WorkingNumber;

namespace Tickover.Workshop.Supply;

/// <summary>Figures and names of a fuel supply as a person reads them.</summary>
public static class SupplyWords
{
    private const double Thin = 0.1; // of a bar, under which thousandths are shown

    /// <summary>A case, such as "full load".</summary>
    /// <param name="kind">The case.</param>
    /// <returns>The words.</returns>
    public static string Case(SupplyCaseKind kind) => kind switch
    {
        SupplyCaseKind.Idle => "idle",
        SupplyCaseKind.FullLoad => "full load",
        _ => "hot",
    };

    /// <summary>A standing in a word.</summary>
    /// <param name="standing">The standing.</param>
    /// <returns>The word.</returns>
    public static string Standing(SupplyStanding standing) => standing switch
    {
        SupplyStanding.Enough => "enough",
        SupplyStanding.Close => "little to spare",
        SupplyStanding.Short => "not enough",
        _ => "not known",
    };

    /// <summary>A standing as the beginning of a line.</summary>
    /// <param name="standing">The standing.</param>
    /// <returns>The word, with a capital.</returns>
    public static string Capitalised(SupplyStanding standing) => Capital(Standing(standing));

    /// <summary>A pressure in the document's unit.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="pascals">Pa.</param>
    /// <returns>Such as "0.24 bar" or "18 mbar".</returns>
    public static string Pressure(PressureUnit unit, double pascals)
    {
        var value = SupplyUnits.FromPascals(unit, pascals);
        return unit == PressureUnit.Psi ? Fixed(value, 2) + "\u2009psi"
            : Math.Abs(value) < Thin ? Fixed(1000 * value, 0) + "\u2009mbar"
            : Fixed(value, 2) + "\u2009bar";
    }

    /// <summary>A flow in litres an hour.</summary>
    /// <param name="flow">m³/s.</param>
    /// <returns>Such as "38.2 l/h".</returns>
    public static string LitresHour(double flow) => Fixed(SupplyUnits.ToLitresHour(flow), 1) + "\u2009l/h";

    /// <summary>A flow in litres a minute.</summary>
    /// <param name="flow">m³/s.</param>
    /// <returns>Such as "1.24 l/min".</returns>
    public static string LitresMinute(double flow) => Fixed(SupplyUnits.ToLitresMinute(flow), 2) + "\u2009l/min";

    /// <summary>A temperature.</summary>
    /// <param name="kelvin">K.</param>
    /// <returns>Such as "48 °C".</returns>
    public static string Celsius(double kelvin) => Fixed(SupplyUnits.ToCelsius(kelvin), 0) + "\u2009°C";

    /// <summary>A length in mm, one decimal.</summary>
    /// <param name="metres">m.</param>
    /// <returns>Such as "1.8 mm".</returns>
    public static string Millimetres(double metres) => Fixed(1000 * metres, 1) + "\u2009mm";

    /// <summary>A multiple.</summary>
    /// <param name="factor">1.</param>
    /// <returns>Such as "1.8 times".</returns>
    public static string Times(double factor) => factor >= SupplyMargin.SearchedTo ? $"over {Fixed(SupplyMargin.SearchedTo, 0)} times" : Fixed(factor, factor < 10 ? 1 : 0) + " times";

    /// <summary>What a part is.</summary>
    /// <param name="part">The part.</param>
    /// <returns>Such as "pipe".</returns>
    public static string Kind(SupplyPart part) => part switch
    {
        PipeRun => "pipe",
        FuelFilter => "filter",
        FuelPump => "pump",
        PressureRegulator => "regulator",
        FloatValve => "float valve",
        TankReturn => "return",
        OpenEnd => "open end",
        _ => "fitting",
    };

    /// <summary>The verdict on all findings.</summary>
    /// <param name="findings">The findings.</param>
    /// <returns>One or two sentences.</returns>
    public static string Verdict(IReadOnlyList<SupplyFinding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        string Named(SupplyStanding standing) => string.Join("; ", findings.Where(finding => finding.Standing == standing).Select(finding => Lower(finding.Heading)));
        if (findings.Any(finding => finding.Standing == SupplyStanding.Short))
        {
            return $"This supply does not carry the engine. Not enough: {Named(SupplyStanding.Short)}.";
        }

        return findings.Any(finding => finding.Standing == SupplyStanding.Close)
            ? $"This supply carries the engine as described, in places with little to spare: {Named(SupplyStanding.Close)}."
            : "This supply carries the engine as described, with something to spare everywhere.";
    }

    internal static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private static string Lower(string text) => text.Length == 0 ? text : char.ToLowerInvariant(text[0]) + text[1..];
}
