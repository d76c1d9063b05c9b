namespace Tickover.Physics.Exhaust;

/// <summary>Figures of the chemistry of exhaust gas.</summary>
public static class ExhaustConstants
{
    /// <summary>Water-gas constant [CO][H2O]/([CO2][H2]) at which exhaust gas freezes, 1.</summary>
    /// <remarks>Brettschneider 1979, as in OIML R 99 and ISO 3930. Texts also take 3.7 or 3.8; the difference is 0.4 % of λ at 0.7, none at 1.</remarks>
    public const double WaterGas = 3.5;

    /// <summary>Carbon atoms counted for each molecule of hydrocarbons given as hexane, 1.</summary>
    /// <remarks>
    /// Hexane has six. An infrared analyser misses about half the carbon of petrol's hydrocarbons (Singer and Harley 1998), so some makers count
    /// twelve; open inspection records agree with six.
    /// </remarks>
    public const double HexaneCarbon = 6;

    /// <summary>Moles of nitrogen (with argon) that come with one of oxygen in dry air, 1.</summary>
    public const double NitrogenToOxygen = (1 - Fuels.Stoichiometry.OxygenInAir) / Fuels.Stoichiometry.OxygenInAir;

    /// <summary>CO + CO2 to which a diluted reading is carried back, dry mole fraction (UN Regulation 83, four-stroke engines; from memory).</summary>
    public const double UndilutedCarbon = 0.15;
}
