namespace Tickover.Physics.Breathing;

/// <summary>Heat release of one cylinder, enough to give the state at exhaust opening and the indicated work.</summary>
/// <remarks>Not a prediction of burn rate: the Wiebe curve is given, only its consequences are computed.</remarks>
public sealed record Combustion
{
    /// <summary>Start of heat release, degrees after firing top dead centre (negative before).</summary>
    public double StartDegrees { get; init; } = -20;

    /// <summary>Duration of heat release, crank degrees.</summary>
    public double DurationDegrees { get; init; } = 60;

    /// <summary>Heat released per kilogram of fresh air trapped, J/kg. At λ below 1 the air decides: some 2.9 MJ/kg.</summary>
    public double HeatPerAirJoulesPerKilogram { get; init; } = 2.75e6;

    /// <summary>Temperature of chamber, liner and piston crown, K.</summary>
    public double WallTemperatureKelvin { get; init; } = 430;
}
