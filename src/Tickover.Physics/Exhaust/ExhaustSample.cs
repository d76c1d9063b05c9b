namespace Tickover.Physics.Exhaust;

/// <summary>Four gases as an analyser has them: mole fractions of the dry gas.</summary>
/// <remarks>Fractions of one, not per cent. Small negative values are an analyser's zero and are taken as they are.</remarks>
public sealed record ExhaustSample
{
    /// <summary>Carbon monoxide, 1.</summary>
    public required double CarbonMonoxide { get; init; }

    /// <summary>Carbon dioxide, 1; above zero, or it is no exhaust.</summary>
    public required double CarbonDioxide { get; init; }

    /// <summary>Oxygen, 1.</summary>
    public required double Oxygen { get; init; }

    /// <summary>Hydrocarbons as hexane, 1: ppm times 1e-6.</summary>
    public required double Hydrocarbons { get; init; }

    /// <summary>Nitric oxide, 1; zero where it is not measured.</summary>
    public double NitricOxide { get; init; }

    /// <summary>[CO]/[CO2], which air that gets into the sample does not change, 1; zero where CO reads below zero.</summary>
    public double MonoxideToDioxide => Math.Max(0, CarbonMonoxide) / CarbonDioxide;

    /// <summary>CO + CO2, 1.</summary>
    public double BurntCarbon => CarbonMonoxide + CarbonDioxide;

    /// <summary>All carbon: CO + CO2 and that of the hydrocarbons.</summary>
    /// <param name="carbonPerHydrocarbon">Carbon atoms counted for one molecule of hexane, 1.</param>
    /// <returns>1.</returns>
    public double Carbon(double carbonPerHydrocarbon = ExhaustConstants.HexaneCarbon) => BurntCarbon + carbonPerHydrocarbon * Hydrocarbons;

    /// <summary>CO carried back to an undiluted sample: CO · 15 %/(CO + CO2) where that sum is below 15 %.</summary>
    /// <returns>1.</returns>
    public double CorrectedMonoxide() => CarbonMonoxide * Math.Max(1, ExhaustConstants.UndilutedCarbon / BurntCarbon); // exhaust (12)

    internal ExhaustSample Checked()
    {
        Precondition.Positive(CarbonDioxide);
        Precondition.Finite(CarbonMonoxide);
        Precondition.Finite(Oxygen);
        Precondition.Finite(Hydrocarbons);
        Precondition.Finite(NitricOxide);
        Precondition.Positive(BurntCarbon);
        Precondition.Positive(Carbon());
        return this;
    }
}
