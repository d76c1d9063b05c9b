using Tickover.Physics.Exhaust;

namespace Tickover.Workshop.Exhaust;

/// <summary>λ from CO alone, where nothing else was read; no air in the sample, no cylinder misfiring.</summary>
public static class LambdaOfMonoxide
{
    /// <summary>CO below which it says only that the mixture is not rich, per cent of dry gas: real engines leave this much at λ 1 (reference, 3.3).</summary>
    public const double Least = 0.3;

    /// <summary>CO above which no petrol engine runs, per cent of dry gas: λ 0.7 and richer.</summary>
    public const double Most = 12;

    private const double Percent = 100;
    private const double Fine = 1e-4;

    /// <summary>The mixture whose exhaust has this CO by the water-gas equilibrium.</summary>
    /// <param name="percent">CO, per cent of dry gas.</param>
    /// <returns>λ, 0.7 to 1; 1 below <see cref="Least"/>; null where the figure is no CO of a petrol engine.</returns>
    public static double? Of(double percent)
    {
        if (!(percent >= 0 && percent <= Most))
        {
            return null;
        }

        var (rich, lean) = (WaterGasEquilibrium.Stated.Minimum, 1.0);
        while (percent >= Least && lean - rich > Fine)
        {
            var middle = (rich + lean) / 2;
            (rich, lean) = WaterGasEquilibrium.At(middle, ExhaustFuel.Regulation).CarbonMonoxide * Percent > percent ? (middle, lean) : (rich, middle);
        }

        return lean;
    }
}
