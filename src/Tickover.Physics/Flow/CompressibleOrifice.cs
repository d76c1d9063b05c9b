namespace Tickover.Physics.Flow;

/// <summary>An opening through which gas flows either way.</summary>
/// <remarks>
/// J. B. Heywood, Internal Combustion Engine Fundamentals, 1988, app. C (from memory): one-dimensional, quasi-steady, isentropic to the throat,
/// no pressure regained behind it. Density and temperature are those of the side the gas comes from.
/// </remarks>
public sealed record CompressibleOrifice
{
    /// <summary>Free area times discharge coefficient, m²; not negative.</summary>
    public required double EffectiveAreaSquareMetres { get; init; }

    /// <summary>The gas.</summary>
    public IdealGas Gas { get; init; } = IdealGas.Air;

    /// <summary>Pressure drop over upstream pressure below which the flow law is smoothed, 1.</summary>
    /// <remarks>Default 1e-5, some 1 Pa at sea level: below every depression that draws fuel.</remarks>
    public double SmoothedBelow { get; init; } = 1e-5;

    /// <summary>Mass flow from one side to the other, kg/s; negative when it flows back.</summary>
    /// <param name="from">Total state on the side counted as upstream.</param>
    /// <param name="to">State on the other side.</param>
    /// <returns>kg/s; zero between equal pressures, antisymmetric, rising with the one pressure and not rising with the other.</returns>
    public double MassFlow(GasState from, GasState to)
    {
        var highest = Math.Max(from.PressurePascals, to.PressurePascals);
        if (highest <= 0)
        {
            return 0; // a vacuum on both sides
        }

        var drop = (from.PressurePascals - to.PressurePascals) / highest;
        var share = UpstreamShare(drop);
        var perRoot = share * InverseRootRt(from) + (1 - share) * InverseRootRt(to);
        return EffectiveAreaSquareMetres * highest * perRoot * SignedPsi(drop); // flow (10)
    }

    /// <summary>Whether a pair of states chokes the opening.</summary>
    /// <param name="from">State on one side.</param>
    /// <param name="to">State on the other.</param>
    /// <returns>True when the throat is sonic, whichever way it flows.</returns>
    public bool IsChoked(GasState from, GasState to)
    {
        var (low, high) = from.PressurePascals < to.PressurePascals ? (from, to) : (to, from);
        return high.PressurePascals > 0
            && low.PressurePascals <= high.PressurePascals * IsentropicFlow.CriticalPressureRatio(Gas.SpecificHeatRatio);
    }

    private double SignedPsi(double drop)
    {
        var ratio = 1 - Math.Abs(drop);
        var gamma = Gas.SpecificHeatRatio;
        return Math.Abs(drop) < SmoothedBelow
            ? Math.Sqrt(2) * SignedRoot.Of(drop, SmoothedBelow) * IsentropicFlow.Phi(ratio, gamma)
            : Math.CopySign(IsentropicFlow.Psi(ratio, gamma), drop);
    }

    // Two sides of different temperature would leave a kink at no flow: the weight changes over smoothly within the smoothed width.
    private double UpstreamShare(double drop)
    {
        var u = Math.Clamp((drop / SmoothedBelow + 1) / 2, 0, 1);
        return u * u * (3 - 2 * u); // flow (11)
    }

    private double InverseRootRt(GasState state) =>
        state.TemperatureKelvin > 0 ? 1 / Math.Sqrt(Gas.GasConstant * state.TemperatureKelvin) : 0;
}
