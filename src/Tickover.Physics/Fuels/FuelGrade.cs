using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Tickover.Physics.Fuels;

/// <summary>A fuel as a car's document names it: E0 to E100, or a pure liquid.</summary>
public sealed class FuelGrade
{
    private FuelGrade(string name, FuelBlend blend) => (Name, Blend) = (name, blend);

    /// <summary>Name, such as "E5" or "iso-octane".</summary>
    public string Name { get; }

    /// <summary>What it is blended from.</summary>
    public FuelBlend Blend { get; }

    /// <summary>Stoichiometric mass of dry air to mass of fuel, 1.</summary>
    public double StoichiometricRatio => Blend.StoichiometricRatio;

    /// <summary>What may be written, for a message.</summary>
    public static string Allowed { get; } = "E0 to E100, " + string.Join(", ", FuelComponents.All.Select(component => component.Name));

    /// <summary>Petrol with a share of ethanol.</summary>
    /// <param name="ethanolPercent">Ethanol by volume, per cent, 0 to 100.</param>
    /// <returns>The grade.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is out of range.</exception>
    public static FuelGrade Ethanol(double ethanolPercent)
    {
        const double percent = 100;
        var share = Precondition.Within(ethanolPercent, 0, percent) / percent;
        var blend = new FuelBlend([new FuelPart(FuelComponents.Petrol, 1 - share), new FuelPart(FuelComponents.Ethanol, share)]);
        return new FuelGrade(string.Create(CultureInfo.InvariantCulture, $"E{ethanolPercent}"), blend);
    }

    /// <summary>One liquid by itself.</summary>
    /// <param name="component">The liquid.</param>
    /// <returns>The grade.</returns>
    public static FuelGrade Pure(FuelComponent component)
    {
        ArgumentNullException.ThrowIfNull(component);
        return new FuelGrade(component.Name, new FuelBlend([new FuelPart(component, 1)]));
    }

    /// <summary>Reads a grade: "E5", "e10", "petrol", "iso-octane" and so on; see <see cref="Allowed"/>.</summary>
    /// <param name="text">As written; case and outer blanks do not matter.</param>
    /// <param name="grade">The grade, if there is one.</param>
    /// <returns>Whether the text names a grade.</returns>
    public static bool TryParse(string? text, [NotNullWhen(true)] out FuelGrade? grade)
    {
        var name = text?.Trim() ?? "";
        grade = FuelComponents.All.FirstOrDefault(component => component.Name.Equals(name, StringComparison.OrdinalIgnoreCase)) is { } liquid
            ? Pure(liquid)
            : TryEthanol(name);
        return grade is not null;
    }

    /// <summary>The fuel at a temperature.</summary>
    /// <param name="temperatureKelvin">Temperature of the fuel at the jet, K; above zero.</param>
    /// <returns>Density, viscosity and stoichiometric ratio; <see cref="FuelBlend.ValidityAt"/> says what they are worth.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not above zero.</exception>
    public FuelProperties At(double temperatureKelvin) => Blend.At(temperatureKelvin);

    private static FuelGrade? TryEthanol(string name)
    {
        const double highestPercent = 100;
        var written = name.Length > 1 && char.ToUpperInvariant(name[0]) == 'E';
        return written
            && double.TryParse(name.AsSpan(1), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent)
            && percent is >= 0 and <= highestPercent
                ? Ethanol(percent)
                : null;
    }
}
