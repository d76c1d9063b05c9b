namespace Tickover.Physics.Exhaust;

/// <summary>Two questions to four gases that λ does not answer: do they add up, and how much air got in behind the engine.</summary>
/// <remarks>
/// The first catches an analyser, the second a sample: air that leaks in brings oxygen and nitrogen as air has them, so the gases still add up.
/// The second has an answer for a rich mixture only; one tailpipe of a lean and a rich barrel looks like a leak.
/// </remarks>
public sealed record ExhaustBalance
{
    private const double RichestBalanced = 0.6; // λ below which soot takes carbon away

    /// <summary>All dry gases together, with the nitrogen and hydrogen that belong to what was measured, 1; one where they add up.</summary>
    public required double DryTotal { get; init; }

    /// <summary>λ of the rich mixture whose exhaust has this [CO]/[CO2], at most 1.</summary>
    public required double RichLambda { get; init; }

    /// <summary>CO + CO2 which that mixture's undiluted exhaust has, dry mole fraction.</summary>
    public required double UndilutedCarbon { get; init; }

    /// <summary>Part of the sample that is air from behind the engine, were the mixture rich, 1; below zero where there is more carbon than can be.</summary>
    public required double AirShare { get; init; }

    /// <summary>Oxygen that this air brings, dry mole fraction.</summary>
    public double OxygenOfAirShare => Fuels.Stoichiometry.OxygenInAir * AirShare;

    /// <summary>Balances a sample.</summary>
    /// <param name="sample">The four gases.</param>
    /// <param name="fuel">The fuel that was burnt.</param>
    /// <returns>The answers.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The sample holds no CO2 or a value that is not finite.</exception>
    public static ExhaustBalance Of(ExhaustSample sample, ExhaustFuel fuel)
    {
        ArgumentNullException.ThrowIfNull(sample);
        ArgumentNullException.ThrowIfNull(fuel);
        sample.Checked();

        var rich = Math.Max(WaterGasEquilibrium.RichLambda(sample.MonoxideToDioxide, fuel), RichestBalanced);
        var undiluted = WaterGasEquilibrium.At(Math.Min(rich, 1), fuel).Carbon;
        return new ExhaustBalance
        {
            DryTotal = Total(sample, fuel),
            RichLambda = rich,
            UndilutedCarbon = undiluted,
            AirShare = 1 - sample.Carbon() / undiluted, // exhaust (11)
        };
    }

    private static double Total(ExhaustSample sample, ExhaustFuel fuel)
    {
        var water = fuel.Water(sample.MonoxideToDioxide, ExhaustConstants.WaterGas) * sample.BurntCarbon;
        var hydrogen = fuel.HydrogenToCarbon / 2 * sample.BurntCarbon - water;
        var oxygenOfAir = sample.CarbonDioxide + sample.CarbonMonoxide / 2 + sample.Oxygen + sample.NitricOxide / 2
            + water / 2 - fuel.OxygenToCarbon / 2 * sample.BurntCarbon;
        var measured = sample.BurntCarbon + sample.Oxygen + sample.Hydrocarbons + sample.NitricOxide;
        return measured + hydrogen + ExhaustConstants.NitrogenToOxygen * oxygenOfAir; // exhaust (10)
    }
}
