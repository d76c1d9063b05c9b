namespace Tickover.Physics.Supply;

/// <summary>Pressure, flow and warmth along a line at a duty.</summary>
public static class SupplySolver
{
    private const int WarmPasses = 25;
    private const int UndampedPasses = 5;
    private const double WarmTolerance = 0.02; // K: a ten-thousandth of the density

    /// <summary>Solves a line.</summary>
    /// <param name="line">The line; <see cref="SupplyLine.Faults"/> must find nothing.</param>
    /// <param name="duty">The duty; <see cref="SupplyDuty.Faults"/> must find nothing.</param>
    /// <returns>The line at work, and how the search ended.</returns>
    /// <exception cref="ArgumentException">The line or the duty has faults.</exception>
    public static SupplyPoint Solve(SupplyLine line, SupplyDuty duty)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(duty);
        if (line.Faults().Concat(duty.Faults(line)).FirstOrDefault() is { } fault)
        {
            throw new ArgumentException(fault, nameof(line));
        }

        return Settle(line, duty);
    }

    /// <summary>Solves a line known to be without faults.</summary>
    internal static SupplyPoint Settle(SupplyLine line, SupplyDuty duty)
    {
        var network = new SupplyNetwork(line, duty);
        network.FindBoilingFlow();
        var search = new SupplySearch(network);
        var (ending, steps) = search.Run();
        var passes = 0;

        // Warmth sets density, viscosity and boiling, these set the flow, and the flow the warmth.
        while (ending == SupplyEnding.Converged && network.Warm(passes < UndampedPasses ? 1 : 0.5, WarmTolerance))
        {
            network.FindBoilingFlow();
            (ending, var more) = search.Run();
            steps += more;
            if (++passes == WarmPasses)
            {
                ending = SupplyEnding.MaximumIterations;
            }
        }

        network.Evaluate(search.Flows);
        return Told(line, duty, network, (ending, steps, search.Worst));
    }

    private static SupplyPoint Told(SupplyLine line, SupplyDuty duty, SupplyNetwork network, (SupplyEnding Ending, int Steps, double Residual) end)
    {
        var parts = network.Parts.Select((part, i) => Told(part, network.State(i))).ToList();
        return new SupplyPoint
        {
            Duty = duty,
            Parts = parts,
            Valves = [.. line.Valves.Select(valve => Told(valve, parts.First(part => ReferenceEquals(part.Part, valve)), duty))],
            Ending = end.Ending,
            Iterations = end.Steps,
            ResidualPascals = end.Residual,
            SuctionBoilsAtFlow = network.BoilingFlow,
            Validity = parts.Aggregate(Validity.Inside, (verdict, part) => verdict
                .And(duty.Fuel.Blend.ValidityAt(part.OutletKelvin))
                .And(FuelVapour.ValidityAt(duty.Fuel.VapourPressureAt38Pascals, part.OutletKelvin))),
        };
    }

    private static PartPoint Told(SupplyPart part, PartState state) => new()
    {
        Part = part,
        MassFlow = state.MassFlow,
        Density = state.Density,
        Viscosity = state.Viscosity,
        InletPascals = state.InletPascals,
        OutletPascals = state.OutletPascals,
        DropPascals = state.Drop,
        HeightPascals = state.HeightPascals,
        InletKelvin = state.InletKelvin,
        OutletKelvin = state.OutletKelvin,
        VapourPascals = state.VapourPascals,
        Regulates = state.Regulates,
    };

    private static ValvePoint Told(FloatValve valve, PartPoint point, SupplyDuty duty)
    {
        const double roundingShare = 1e-6;
        var gauge = point.OutletPascals - duty.AirPascals;
        var demand = duty.DemandKilogramsPerSecond.GetValueOrDefault(valve.Name);
        var shortfall = demand - point.MassFlow;
        var starved = shortfall > roundingShare * demand;
        return new ValvePoint
        {
            Valve = valve,
            DemandKilogramsPerSecond = demand,
            MassFlow = point.MassFlow,
            InletGaugePascals = gauge,
            WideOpenKilogramsPerSecond = point.Density * valve.WideOpenFlow(gauge, point.Density),
            LevelChangeMetres = starved ? double.NaN : FloatLevel.Running(valve, gauge, point.VolumeFlow, point.Density),
            FloodingGaugePascals = FloatLevel.FloodingPressure(valve, point.Density),
            RunsDrySeconds = starved ? FloatLevel.RunsDry(valve, shortfall / point.Density) : double.PositiveInfinity,
        };
    }
}
