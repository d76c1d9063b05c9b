namespace Tickover.Physics.Exhaust;

/// <summary>What the exhaust of a mixture is made of.</summary>
/// <remarks>Complete burning: no hydrocarbons, no nitric oxide, and below λ 1 no oxygen. Real exhaust carries some of each.</remarks>
public sealed record ExhaustComposition
{
    /// <summary>Carbon monoxide, dry mole fraction.</summary>
    public required double CarbonMonoxide { get; init; }

    /// <summary>Carbon dioxide, dry mole fraction.</summary>
    public required double CarbonDioxide { get; init; }

    /// <summary>Hydrogen, dry mole fraction.</summary>
    public required double Hydrogen { get; init; }

    /// <summary>Oxygen, dry mole fraction.</summary>
    public required double Oxygen { get; init; }

    /// <summary>Nitrogen with argon, dry mole fraction.</summary>
    public required double Nitrogen { get; init; }

    /// <summary>Water, mole fraction of the wet gas.</summary>
    public required double WetWater { get; init; }

    /// <summary>Whether λ lay where the equilibrium holds.</summary>
    public required Validity Validity { get; init; }

    /// <summary>CO + CO2, dry mole fraction.</summary>
    public double Carbon => CarbonMonoxide + CarbonDioxide;

    /// <summary>A dry fraction as a fraction of the wet gas, as it leaves the engine.</summary>
    /// <param name="dryFraction">Mole fraction of the dry gas.</param>
    /// <returns>Mole fraction of the wet gas.</returns>
    public double Wet(double dryFraction) => dryFraction * (1 - WetWater); // exhaust (6)

    /// <summary>The four gases an analyser would show of it, undiluted.</summary>
    /// <returns>The sample.</returns>
    public ExhaustSample ToExhaustSample() => new()
    {
        CarbonMonoxide = CarbonMonoxide,
        CarbonDioxide = CarbonDioxide,
        Oxygen = Oxygen,
        Hydrocarbons = 0,
    };
}
