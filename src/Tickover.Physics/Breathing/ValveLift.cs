namespace Tickover.Physics.Breathing;

/// <summary>Lift and effective flow area of a valve over the crank angle.</summary>
public static class ValveLift
{
    /// <summary>Lift at a crank angle: a sine-squared lobe between opening and closing, breathing (5).</summary>
    /// <param name="valve">The valve.</param>
    /// <param name="degrees">Crank angle after firing top dead centre, any number of turns.</param>
    /// <returns>Lift, m; zero while shut.</returns>
    public static double Lift(ValveTiming valve, double degrees)
    {
        ArgumentNullException.ThrowIfNull(valve);
        var span = valve.ClosesDegrees - valve.OpensDegrees;
        var since = (degrees - valve.OpensDegrees) % 720;
        if (since < 0)
        {
            since += 720;
        }

        if (since >= span)
        {
            return 0;
        }

        var s = Math.Sin(Math.PI * since / span);
        return valve.MaximumLiftMetres * s * s;
    }

    /// <summary>Discharge coefficient times the smaller of curtain and throat, smoothly joined, all valves together: breathing (6).</summary>
    /// <param name="valve">The valve.</param>
    /// <param name="degrees">Crank angle after firing top dead centre.</param>
    /// <returns>Effective area, m².</returns>
    public static double EffectiveArea(ValveTiming valve, double degrees)
    {
        ArgumentNullException.ThrowIfNull(valve);
        var curtain = Math.PI * valve.HeadDiameterMetres * Lift(valve, degrees);
        var throatDiameter = valve.HeadDiameterMetres * valve.ThroatToHeadRatio;
        var throat = Math.PI / 4 * throatDiameter * throatDiameter;

        // Curtain and throat act as two orifices of which the narrower rules; the fourth power joins them without a kink.
        var narrower = curtain / Math.Pow(1 + Math.Pow(curtain / throat, 4), 0.25);
        return valve.Count * valve.DischargeCoefficient * narrower;
    }
}
