namespace Tickover.Physics.Supply;

/// <summary>What goes on in one part while the flows are looked for; the public record of it is <see cref="PartPoint"/>.</summary>
internal struct PartState
{
    public double MassFlow;
    public double Density;
    public double Viscosity;
    public double InletKelvin;
    public double OutletKelvin;
    public double VapourPascals;
    public double InletPascals;
    public double OutletPascals;
    public double Drop;
    public double HeightPascals;
    public bool Regulates;
}
