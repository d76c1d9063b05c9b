using Tickover.Physics.Air;

namespace Tickover.Physics.Supply;

/// <summary>A line laid out for reckoning: parts in order from the tank, flows up from the ends, pressures down from the tank.</summary>
internal sealed class SupplyNetwork
{
    private readonly SupplyDuty _duty;
    private readonly double _tankPascals;
    private readonly int[] _parents;
    private readonly double[] _rises; // m, outlet over inlet
    private readonly PartState[] _states;
    private readonly int _pump;
    private readonly double _pumpFactor = 1;

    public SupplyNetwork(SupplyLine line, SupplyDuty duty)
    {
        _duty = duty;
        _tankPascals = duty.AirPascals + line.TankGaugePascals;
        Parts = Ordered(line);
        var places = Parts.Select((part, index) => (part.Name, index)).ToDictionary(pair => pair.Name, pair => pair.index, StringComparer.Ordinal);
        _parents = [.. Parts.Select(part => part.After.Length == 0 ? -1 : places[part.After])];
        _rises = [.. Parts.Select((part, i) => part.OutletHeightMetres - (_parents[i] < 0 ? line.TankSurfaceHeightMetres : Parts[_parents[i]].OutletHeightMetres))];
        _states = new PartState[Parts.Count];
        _pump = Array.FindIndex(Parts.ToArray(), part => part is FuelPump);
        if (line.Pump is { } pump)
        {
            _pumpFactor = pump.FlowFactor(duty.EngineRpm, duty.PumpVolts);
        }

        Leaves = [.. Enumerable.Range(0, Parts.Count).Where(i => Parts[i].IsEnd)];
        Demands = [.. Leaves.Select(leaf => Parts[leaf] is FloatValve ? duty.DemandKilogramsPerSecond.GetValueOrDefault(Parts[leaf].Name) : double.PositiveInfinity)];
        Shared = SharedWays();
        for (var i = 0; i < _states.Length; i++)
        {
            SetWarmth(i, duty.TankKelvin, duty.TankKelvin);
        }
    }

    /// <summary>The parts, each after the one it hangs on.</summary>
    public IReadOnlyList<SupplyPart> Parts { get; }

    /// <summary>Places of the ends among the parts.</summary>
    public IReadOnlyList<int> Leaves { get; }

    /// <summary>What each end takes at most, kg/s; infinite at a return or an open end.</summary>
    public IReadOnlyList<double> Demands { get; }

    /// <summary>Flow at which it boils before the pump, m³/s.</summary>
    public double BoilingFlow { get; private set; } = double.PositiveInfinity;

    private int[][][] Shared { get; }

    public PartState State(int part) => _states[part];

    /// <summary>Sets the flows and reckons all pressures.</summary>
    /// <param name="leafFlows">Mass flow out of each end, kg/s.</param>
    public void Evaluate(ReadOnlySpan<double> leafFlows)
    {
        for (var i = 0; i < _states.Length; i++)
        {
            _states[i].MassFlow = 0;
        }

        for (var leaf = 0; leaf < Leaves.Count; leaf++)
        {
            _states[Leaves[leaf]].MassFlow = leafFlows[leaf];
        }

        for (var i = _states.Length - 1; i > 0; i--)
        {
            _states[_parents[i]].MassFlow += _states[i].MassFlow;
        }

        for (var i = 0; i < _states.Length; i++)
        {
            PassPressure(i, ref _states[i]);
        }
    }

    /// <summary>What is left of the pressure at an end beyond what its flow needs, Pa.</summary>
    /// <param name="leaf">Which end.</param>
    /// <returns>Pa; falls with every flow.</returns>
    public double Residual(int leaf)
    {
        ref var state = ref _states[Leaves[leaf]];
        var behind = Parts[Leaves[leaf]] is TankReturn ? _tankPascals : _duty.AirPascals;
        return state.OutletPascals - behind - state.Drop; // supply (15)
    }

    /// <summary>Change of the residual at one end with the flow of another, Pa s/kg.</summary>
    /// <param name="leaf">Whose residual.</param>
    /// <param name="other">Whose flow.</param>
    /// <returns>Pa s/kg; not above zero.</returns>
    public double Slope(int leaf, int other)
    {
        // A regulator at work hides all that lies before it.
        var sum = 0.0;
        foreach (var part in Shared[leaf][other])
        {
            sum = _states[part].Regulates ? DropSlope(part) : sum + DropSlope(part);
        }

        return -sum; // supply (16)
    }

    /// <summary>Looks for the flow at which the fuel boils before the pump.</summary>
    public void FindBoilingFlow()
    {
        BoilingFlow = double.PositiveInfinity;
        if (_pump < 0 || SuctionMargin(0) <= 0)
        {
            BoilingFlow = _pump < 0 ? double.PositiveInfinity : 0;
            return;
        }

        const int halvings = 45;
        var high = 2 * _pumpFactor * ((FuelPump)Parts[_pump]).Curve.FreeFlow;
        if (SuctionMargin(high) > 0)
        {
            return;
        }

        var low = 0.0;
        for (var i = 0; i < halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = SuctionMargin(middle) > 0 ? (middle, high) : (low, middle);
        }

        BoilingFlow = low;
    }

    /// <summary>Reckons the fuel's warmth along the line from the flows, and takes it over where it moved.</summary>
    /// <param name="share">How much of the change to take over, 1; above zero to 1.</param>
    /// <param name="tolerance">Change that counts for none, K.</param>
    /// <returns>Whether anything moved.</returns>
    public bool Warm(double share, double tolerance)
    {
        var after = new double[_states.Length];
        var moved = false;
        for (var i = 0; i < _states.Length; i++)
        {
            var before = _parents[i] < 0 ? _duty.TankKelvin : after[_parents[i]];
            var around = _duty.Around(Parts[i].Zone);
            var capacity = _states[i].MassFlow * SupplyLosses.PetrolSpecificHeat;
            var taken = Parts[i].HeatTakenWattsPerKelvin;
            var kept = taken <= 0 ? 1 : capacity <= 0 ? 0 : Math.Exp(-taken / capacity);
            var settled = around + (before - around) * kept; // supply (8)
            after[i] = _states[i].OutletKelvin + share * (settled - _states[i].OutletKelvin);
            moved |= Math.Abs(settled - _states[i].OutletKelvin) > tolerance;
        }

        for (var i = 0; moved && i < _states.Length; i++)
        {
            SetWarmth(i, _parents[i] < 0 ? _duty.TankKelvin : after[_parents[i]], after[i]);
        }

        return moved;
    }

    private static List<SupplyPart> Ordered(SupplyLine line)
    {
        var ordered = line.Parts.Where(part => part.After.Length == 0).ToList();
        for (var i = 0; i < ordered.Count; i++)
        {
            ordered.AddRange(line.Parts.Where(part => part.After.Equals(ordered[i].Name, StringComparison.Ordinal)));
        }

        return ordered;
    }

    // For every pair of ends the parts that the flow of both passes, from the tank on.
    private int[][][] SharedWays()
    {
        var ways = Leaves.Select(leaf =>
        {
            var way = new List<int>();
            for (var at = leaf; at >= 0; at = _parents[at])
            {
                way.Add(at);
            }

            way.Reverse();
            return way;
        }).ToList();
        return [.. ways.Select(mine => ways.Select(other => mine.Intersect(other).ToArray()).ToArray())];
    }

    private void SetWarmth(int i, double before, double after)
    {
        ref var state = ref _states[i];
        (state.InletKelvin, state.OutletKelvin) = (before, after);
        var fuel = _duty.Fuel.Blend.At((before + after) / 2);
        (state.Density, state.Viscosity) = (fuel.DensityKilogramsPerCubicMetre, fuel.ViscosityPascalSeconds);
        state.VapourPascals = _duty.Fuel.VapourPressure(after);
    }

    private void PassPressure(int i, ref PartState state)
    {
        state.InletPascals = _parents[i] < 0 ? _tankPascals : _states[_parents[i]].OutletPascals;
        state.Drop = DropAt(i, state.MassFlow);
        state.HeightPascals = Height(i);
        state.Regulates = false;
        state.OutletPascals = state.InletPascals - state.HeightPascals - (Parts[i].IsEnd ? 0 : state.Drop); // supply (7)
        if (Parts[i] is PressureRegulator regulator && regulator.Ceiling(state.MassFlow / state.Density) + _duty.AirPascals < state.OutletPascals)
        {
            state.Regulates = true;
            state.OutletPascals = regulator.Ceiling(state.MassFlow / state.Density) + _duty.AirPascals; // supply (13)
        }
    }

    private double Height(int i) => _states[i].Density * AirConstants.StandardGravityMetresPerSecondSquared * _rises[i];

    private double DropAt(int i, double massFlow)
    {
        ref var state = ref _states[i];
        var flow = massFlow / state.Density;
        return Parts[i] is FuelPump pump ? -Rise(pump, flow) : Parts[i].Drop(flow, state.Density, state.Viscosity);
    }

    private double Rise(FuelPump pump, double flow)
    {
        // Within a fiftieth of the flow at which it boils before the pump, what the pump adds breaks down.
        const double breakdownShare = 0.02;
        var rise = pump.Curve.At(flow / _pumpFactor); // supply (10)
        var width = breakdownShare * Math.Max(BoilingFlow, breakdownShare * pump.Curve.FreeFlow * _pumpFactor);
        return double.IsFinite(width) ? Math.Min(rise, pump.Curve.DeadHeadPascals * (BoilingFlow - flow) / width) : rise; // supply (12)
    }

    private double DropSlope(int i)
    {
        ref var state = ref _states[i];
        const double relative = 1e-5;
        const double least = 1e-9; // kg/s, a ten-thousandth of what an engine idles on
        var step = relative * Math.Abs(state.MassFlow) + least;
        if (state.Regulates)
        {
            return ((PressureRegulator)Parts[i]).DroopPascalSeconds / state.Density;
        }

        return (DropAt(i, state.MassFlow + step) - DropAt(i, state.MassFlow - step)) / (2 * step);
    }

    private double SuctionMargin(double flow)
    {
        var margin = double.PositiveInfinity;
        var total = _tankPascals;
        for (var i = 0; i < _pump; i++)
        {
            // Before the pump there is one way only, so the parts follow one another.
            ref var state = ref _states[i];
            total -= Parts[i].Drop(flow, state.Density, state.Viscosity) + Height(i);
            var speed = Parts[i].SpeedBoreMetres > 0 ? flow / Flow.Circle.Area(Parts[i].SpeedBoreMetres) : 0;
            margin = Math.Min(margin, total - state.Density * speed * speed / 2 - state.VapourPascals);
        }

        var needed = ((FuelPump)Parts[_pump]).RequiredSuctionHeadMetres * _states[_pump].Density * AirConstants.StandardGravityMetresPerSecondSquared;
        return Math.Min(margin, total - needed - _states[_pump].VapourPascals);
    }
}
