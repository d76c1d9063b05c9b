namespace Tickover.Physics.Supply;

/// <summary>A pump's curve from what a workshop can read at the end of the line.</summary>
public static class WorkshopPump
{
    /// <summary>Straight curve through the pressure of the shut line and the flow of the open one, the line's own share put back.</summary>
    /// <param name="line">The line with any pump in its place; without regulator.</param>
    /// <param name="duty">Warmth and air while it was read; its tank temperature is taken for the whole line.</param>
    /// <param name="deadHeadGauge">Pressure above the air at the last float valve with the needles shut, Pa; above zero.</param>
    /// <param name="openFlow">Flow into a can from the last valve's line, all other branches clamped, m³/s; above zero.</param>
    /// <param name="canBoreMetres">Bore of the hose into the can, m; above zero.</param>
    /// <returns>The two points, which <see cref="PumpCurve.FaultsOf"/> has still to pass.</returns>
    public static IReadOnlyList<(double Flow, double Pressure)> Points(SupplyLine line, SupplyDuty duty, double deadHeadGauge, double openFlow, double canBoreMetres)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(duty);
        var fuel = duty.Fuel.Blend.At(duty.TankKelvin);
        var weight = fuel.DensityKilogramsPerCubicMetre * Air.AirConstants.StandardGravityMetresPerSecondSquared;
        var last = line.Valves.Last();
        var opened = line.OpenedAfter(last.After, canBoreMetres, line.WayTo(last.After)[^1].OutletHeightMetres);
        var lost = opened.Parts.Where(part => part is not FuelPump).Sum(part => part.Drop(openFlow, fuel.DensityKilogramsPerCubicMetre, fuel.ViscosityPascalSeconds));
        double Lifted(SupplyPart end) => weight * (end.OutletHeightMetres - line.TankSurfaceHeightMetres) - line.TankGaugePascals;
        return [(0, deadHeadGauge + Lifted(last)), (openFlow, lost + Lifted(opened.Parts[^1]))]; // supply (11)
    }
}
