using Tickover.Physics.Air;
using Tickover.Physics.Flow;

namespace Tickover.Physics.Supply;

/// <summary>Where the fuel stands in a float chamber: the float's lift against the pressure under the needle.</summary>
/// <remarks>Statics of a float of straight sides; its weight is in the level set. Vibration, which helps needles to seat, is left out.</remarks>
public static class FloatLevel
{
    /// <summary>How much deeper the float must lie to shut the needle against a pressure, m.</summary>
    /// <param name="valve">The valve.</param>
    /// <param name="gaugePascals">Pressure before the seat above the air, Pa.</param>
    /// <param name="density">Density of the fuel, kg/m³; above zero.</param>
    /// <returns>m.</returns>
    public static double ShutOffRise(FloatValve valve, double gaugePascals, double density)
    {
        ArgumentNullException.ThrowIfNull(valve);
        return gaugePascals * Circle.Area(valve.SeatMetres) / LiftPerMetre(valve, density); // supply (24)
    }

    /// <summary>How far the needle must lift for a flow, m.</summary>
    /// <param name="valve">The valve.</param>
    /// <param name="gaugePascals">Pressure before the seat above the air, Pa; above zero.</param>
    /// <param name="volumeFlow">Flow, m³/s; not negative.</param>
    /// <param name="density">Density, kg/m³; above zero.</param>
    /// <returns>m; the full lift from the wide-open flow on.</returns>
    public static double NeedleLift(FloatValve valve, double gaugePascals, double volumeFlow, double density)
    {
        ArgumentNullException.ThrowIfNull(valve);
        var wideOpen = valve.WideOpenFlow(gaugePascals, density);
        return volumeFlow >= wideOpen ? valve.FullLiftMetres : valve.FullLiftMetres * volumeFlow / wideOpen; // supply (25)
    }

    /// <summary>Level above the one set while fuel runs in, m; negative below.</summary>
    /// <param name="valve">The valve.</param>
    /// <param name="gaugePascals">Pressure before the seat above the air, Pa.</param>
    /// <param name="volumeFlow">Flow, m³/s; not negative.</param>
    /// <param name="density">Density, kg/m³; above zero.</param>
    /// <returns>m.</returns>
    public static double Running(FloatValve valve, double gaugePascals, double volumeFlow, double density)
    {
        ArgumentNullException.ThrowIfNull(valve);
        return ShutOffRise(valve, gaugePascals - valve.SetAtGaugePascals, density)
            - valve.LeverRatio * NeedleLift(valve, gaugePascals, volumeFlow, density); // supply (26)
    }

    /// <summary>Pressure above the air at which the fuel rises to the spill with nothing taken out, Pa.</summary>
    /// <param name="valve">The valve.</param>
    /// <param name="density">Density, kg/m³; above zero.</param>
    /// <returns>Pa.</returns>
    public static double FloodingPressure(FloatValve valve, double density)
    {
        ArgumentNullException.ThrowIfNull(valve);
        return valve.SetAtGaugePascals + valve.SpillMetres * LiftPerMetre(valve, density) / Circle.Area(valve.SeatMetres); // supply (27)
    }

    /// <summary>Time from the level set until the jets draw air, s.</summary>
    /// <param name="valve">The valve.</param>
    /// <param name="shortfall">What is taken less what comes, m³/s.</param>
    /// <returns>s; infinite where enough comes.</returns>
    public static double RunsDry(FloatValve valve, double shortfall)
    {
        ArgumentNullException.ThrowIfNull(valve);
        return shortfall > 0 ? valve.JetDepthMetres * valve.ChamberAreaSquareMetres / shortfall : double.PositiveInfinity; // supply (28)
    }

    /// <summary>Rise of the fuel over the jets when the car is pushed or leans, m; the float holds the level where it floats.</summary>
    /// <param name="valve">The valve.</param>
    /// <param name="forwardAcceleration">Acceleration ahead, m/s²; uphill counts as g times the sine of the slope.</param>
    /// <param name="leftAcceleration">Acceleration to the left, as in a left-hand bend, m/s².</param>
    /// <returns>m; negative where the fuel runs away from the jets.</returns>
    public static double TiltRise(FloatValve valve, double forwardAcceleration, double leftAcceleration)
    {
        ArgumentNullException.ThrowIfNull(valve);
        return -(valve.JetAheadMetres * forwardAcceleration + valve.JetLeftMetres * leftAcceleration)
            / AirConstants.StandardGravityMetresPerSecondSquared; // supply (29)
    }

    private static double LiftPerMetre(FloatValve valve, double density) =>
        valve.LeverRatio * density * AirConstants.StandardGravityMetresPerSecondSquared * valve.FloatAreaSquareMetres;
}
