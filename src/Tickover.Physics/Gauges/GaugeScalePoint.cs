namespace Tickover.Physics.Gauges;

/// <summary>The needle at one filling.</summary>
/// <param name="VolumeCubicMetres">Fuel in, m³.</param>
/// <param name="Needle">Where it stands, 0 at E to 1 at F.</param>
/// <param name="Wanted">Where it should stand.</param>
public readonly record struct GaugeScalePoint(double VolumeCubicMetres, double Needle, double Wanted)
{
    /// <summary>How much it shows too much, of the full scale.</summary>
    public double Error => Needle - Wanted;
}
