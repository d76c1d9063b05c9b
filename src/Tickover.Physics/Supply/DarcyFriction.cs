namespace Tickover.Physics.Supply;

/// <summary>Friction factor of round pipes, after Darcy (four times Fanning's).</summary>
/// <remarks>
/// C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939) 133; S. E. Haaland, J. Fluids Eng. 105 (1983) 89. Between laminar and turbulent flow nobody
/// can say; a straight line between the two ends keeps the drop rising with the flow, which the solver needs and every pipe shows.
/// </remarks>
public static class DarcyFriction
{
    /// <summary>Reynolds number up to which the flow is taken as laminar, 1.</summary>
    public const double LaminarUpTo = 2300;

    /// <summary>Reynolds number from which the flow is taken as turbulent, 1.</summary>
    public const double TurbulentFrom = 4000;

    private const double LaminarConstant = 64;
    private const int ColebrookSteps = 6; // Newton from Haaland's value is at rounding after three

    /// <summary>Friction factor, 1.</summary>
    /// <param name="reynolds">Reynolds number on the bore, 1; above zero.</param>
    /// <param name="relativeRoughness">Roughness over bore, 1; 0 to 0.05.</param>
    /// <returns>1; continuous, and its product with the Reynolds number squared rises.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A Reynolds number not above zero.</exception>
    public static double Of(double reynolds, double relativeRoughness)
    {
        if (Precondition.Positive(reynolds) <= LaminarUpTo)
        {
            return Laminar(reynolds);
        }

        if (reynolds >= TurbulentFrom)
        {
            return Colebrook(reynolds, relativeRoughness);
        }

        var share = (reynolds - LaminarUpTo) / (TurbulentFrom - LaminarUpTo);
        return (1 - share) * Laminar(LaminarUpTo) + share * Colebrook(TurbulentFrom, relativeRoughness); // supply (4)
    }

    /// <summary>Friction factor of laminar flow, 1.</summary>
    /// <param name="reynolds">Reynolds number, 1; above zero.</param>
    /// <returns>1.</returns>
    public static double Laminar(double reynolds) => LaminarConstant / reynolds; // supply (1)

    /// <summary>Friction factor of turbulent flow by Colebrook's equation, 1.</summary>
    /// <param name="reynolds">Reynolds number, 1; 4000 to 10⁸ stated.</param>
    /// <param name="relativeRoughness">Roughness over bore, 1; 0 to 0.05.</param>
    /// <returns>1; the root to rounding.</returns>
    public static double Colebrook(double reynolds, double relativeRoughness)
    {
        var a = Precondition.NotNegative(relativeRoughness) / 3.7;
        var b = 2.51 / Precondition.Positive(reynolds);
        var x = 1 / Math.Sqrt(Haaland(reynolds, relativeRoughness));
        for (var step = 0; step < ColebrookSteps; step++)
        {
            // x + 2 log10(a + b x) = 0 rises and is concave: Newton's rule settles from either side.
            var inner = a + b * x;
            var correction = (x + 2 * Math.Log10(inner)) / (1 + 2 * b / (Math.Log(10) * inner)); // supply (2)
            x -= correction;
            if (Math.Abs(correction) <= 1e-14 * x)
            {
                break;
            }
        }

        return 1 / (x * x);
    }

    /// <summary>Friction factor of turbulent flow by Haaland's explicit fit to Colebrook, 1.</summary>
    /// <param name="reynolds">Reynolds number, 1; 4000 to 10⁸ stated.</param>
    /// <param name="relativeRoughness">Roughness over bore, 1; 0 to 0.05.</param>
    /// <returns>1; within 2 % of Colebrook's.</returns>
    public static double Haaland(double reynolds, double relativeRoughness)
    {
        var root = -1.8 * Math.Log10(Math.Pow(relativeRoughness / 3.7, 1.11) + 6.9 / reynolds); // supply (3)
        return 1 / (root * root);
    }
}
