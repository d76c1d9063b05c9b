namespace Tickover.Physics.Sending;

/// <summary>The fuel in the tanks.</summary>
/// <param name="DensityKilogramsPerCubicMetre">kg/m³; above zero.</param>
/// <param name="ViscosityPascalSeconds">Dynamic viscosity, Pa s; above zero.</param>
public sealed record CarriedFuel(double DensityKilogramsPerCubicMetre, double ViscosityPascalSeconds)
{
    /// <summary>Petrol at 20 °C: 740 kg/m³, 0.5 mPa s; handbook values from memory.</summary>
    public static CarriedFuel Petrol { get; } = new(740, 0.5e-3);
}
