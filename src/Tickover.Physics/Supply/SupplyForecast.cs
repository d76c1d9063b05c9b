namespace Tickover.Physics.Supply;

/// <summary>What each reading of a line would show.</summary>
internal static class SupplyForecast
{
    private const double HeldWell = 0.9;

    /// <summary>Readings of a line as it is put in.</summary>
    /// <param name="test">How it is tested.</param>
    /// <param name="line">The line, with its fault.</param>
    /// <returns>A value for each reading that can be taken.</returns>
    public static Dictionary<SupplyReadingKind, double> Of(SupplyTest test, SupplyLine line)
    {
        var idle = test.Duty with { DemandKilogramsPerSecond = new Dictionary<string, double>(StringComparer.Ordinal) };
        var last = line.Valves.Last();
        var readings = new Dictionary<SupplyReadingKind, double>
        {
            [SupplyReadingKind.DeadHead] = SupplySolver.Settle(line, idle).Of(last.Name)!.OutletPascals - idle.AirPascals,
            [SupplyReadingKind.PressureHeld] = HeldWell,
        };

        var (flow, point) = OpenFlow(test, line, last.After);
        readings[SupplyReadingKind.FlowAtChamber] = flow;
        readings[SupplyReadingKind.Suction] = idle.AirPascals - point.Of(point.Parts[PumpPlace(point)].Part.After)!.StaticPascals;
        if (test.FilterName is { } filter)
        {
            readings[SupplyReadingKind.FlowBeforeFilter] = OpenFlow(test, line, line.Parts.First(part => part.Name.Equals(filter, StringComparison.Ordinal)).After).Flow;
        }

        if (line.Pump is { Kind: PumpKind.Electric } && idle.PumpVolts is { } volts)
        {
            readings[SupplyReadingKind.PumpVolts] = volts;
        }

        return readings;
    }

    private static (double Flow, SupplyPoint Point) OpenFlow(SupplyTest test, SupplyLine line, string after)
    {
        var idle = test.Duty with { DemandKilogramsPerSecond = new Dictionary<string, double>(StringComparer.Ordinal) };
        var opened = line.OpenedAfter(after, test.CanBoreMetres, line.WayTo(after)[^1].OutletHeightMetres);
        var point = SupplySolver.Settle(opened, idle);
        return (point.Parts[^1].VolumeFlow, point);
    }

    private static int PumpPlace(SupplyPoint point) => point.Parts.Select((part, i) => (part, i)).First(pair => pair.part.Part is FuelPump).i;
}
