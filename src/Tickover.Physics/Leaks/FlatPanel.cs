namespace Tickover.Physics.Leaks;

/// <summary>A flat rectangular panel of a tank under even pressure. docs/physics/leaks.md (10) to (13).</summary>
/// <remarks>
/// Small deflections (half the thickness at most); beyond that the sheet begins to hang like a skin and bears more than this says, with a dent that may stay.
/// Figures of W. C. Young and R. G. Budynas, <i>Roark's Formulas for Stress and Strain</i>, 7th ed., table 11.4, cases 1a and 8a (from memory), for a Poisson's ratio of 0.3.
/// </remarks>
public sealed record FlatPanel
{
    private const double MeanOfCosineShape = 0.25;

    private static readonly double[] Aspects = [1.0, 1.2, 1.4, 1.6, 1.8, 2.0];
    private static readonly double[] ClampedStress = [0.3078, 0.3834, 0.4356, 0.4680, 0.4872, 0.4974];
    private static readonly double[] ClampedDeflection = [0.0138, 0.0188, 0.0226, 0.0251, 0.0267, 0.0277];
    private static readonly double[] SupportedStress = [0.2874, 0.3762, 0.4530, 0.5172, 0.5688, 0.6102];
    private static readonly double[] SupportedDeflection = [0.0444, 0.0616, 0.0770, 0.0906, 0.1017, 0.1110];

    /// <summary>Shorter side, m; above zero.</summary>
    public required double ShortMetres { get; init; }

    /// <summary>Longer side, m; not below the shorter.</summary>
    public required double LongMetres { get; init; }

    /// <summary>Thickness, m; above zero.</summary>
    public required double ThicknessMetres { get; init; }

    /// <summary>Young's modulus, Pa; above zero.</summary>
    public required double StiffnessPascals { get; init; }

    /// <summary>Greatest bending stress.</summary>
    /// <param name="pascals">Pressure, Pa; not negative.</param>
    /// <param name="edge">How its edges are held.</param>
    /// <returns>Pa: at the middle of the long edge where clamped, in the middle of the panel where not.</returns>
    public double Stress(double pascals, PanelEdge edge) =>
        Precondition.NotNegative(pascals) * Of(ClampedStress, SupportedStress, 0.5, 0.75, edge) * Math.Pow(ShortMetres / ThicknessMetres, 2); // leaks (10)

    /// <summary>Deflection in the middle, as long as it is small.</summary>
    /// <param name="pascals">Pressure, Pa; not negative.</param>
    /// <param name="edge">How its edges are held.</param>
    /// <returns>m.</returns>
    public double Deflection(double pascals, PanelEdge edge) =>
        Precondition.NotNegative(pascals) * Of(ClampedDeflection, SupportedDeflection, 0.0284, 0.1421, edge)
        * Math.Pow(ShortMetres, 4) / (StiffnessPascals * Math.Pow(ThicknessMetres, 3)); // leaks (11)

    /// <summary>Pressure at which the stress comes to a limit, whichever way the edges are held.</summary>
    /// <param name="limitPascals">Stress, Pa; above zero.</param>
    /// <returns>Pa.</returns>
    public double PressureAtStress(double limitPascals) =>
        Precondition.Positive(limitPascals) / Math.Max(Stress(1, PanelEdge.Clamped), Stress(1, PanelEdge.Supported)); // leaks (12)

    /// <summary>Pressure at which it bulges by half its thickness: from there on it can be seen to breathe.</summary>
    /// <param name="edge">How its edges are held.</param>
    /// <returns>Pa.</returns>
    public double BreathingPressure(PanelEdge edge) => ThicknessMetres / (2 * Deflection(1, edge)); // leaks (12)

    /// <summary>Room a clamped panel gives for each pascal.</summary>
    /// <returns>m³/Pa: a quarter of its area times its deflection.</returns>
    public double Spring() => MeanOfCosineShape * ShortMetres * LongMetres * Deflection(1, PanelEdge.Clamped); // leaks (13)

    private double Of(double[] clamped, double[] supported, double clampedStrip, double supportedStrip, PanelEdge edge)
    {
        Precondition.Positive(ShortMetres);
        Precondition.Positive(ThicknessMetres);
        Precondition.Positive(StiffnessPascals);
        var aspect = Precondition.Within(LongMetres, ShortMetres, double.MaxValue) / ShortMetres;
        var (figures, strip) = edge is PanelEdge.Clamped ? (clamped, clampedStrip) : (supported, supportedStrip);
        if (aspect >= Aspects[^1])
        {
            // Towards the long strip's figure by the cube: within 1.5 % of the table's 3, 4 and 5.
            return strip + (figures[^1] - strip) * Math.Pow(Aspects[^1] / aspect, 3);
        }

        var i = Array.FindLastIndex(Aspects, a => a <= aspect);
        return double.Lerp(figures[i], figures[i + 1], (aspect - Aspects[i]) / (Aspects[i + 1] - Aspects[i]));
    }
}
