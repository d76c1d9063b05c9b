using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Tickover.Physics.Air;
using Tickover.Physics.Flow;

namespace Tickover.Physics.Breathing;

/// <summary>Integrates one group over a cycle at four operating points: docs/physics/breathing.md (4) to (14).</summary>
/// <remarks>
/// A two-stage linearly implicit method of second order for any approximation of the Jacobian (Verwer, Spee, Blom and
/// Hundsdorfer, SIAM J. Sci. Comput. 20 (1999) 1456: ROS2), so the Jacobian holds only what is stiff: flows on pressures.
/// Corrections are made to flows, not to states; mass and energy therefore close to rounding. No allocation in a step.
/// </remarks>
internal sealed class GroupIntegrator
{
    // (3 + √3)/6: ROS2 is of second order for any value; at this one its leading error vanishes on linear equations with the exact
    // Jacobian. Against 1, halving the step then moved AFR by 0.17 % at most instead of 0.4 %, where the samples' engines run.
    private const double Gamma = 0.788675134594813;

    private readonly GroupSetting _setting;
    private readonly CycleTables _tables;
    private readonly GasLanes _gas;
    private readonly LaneOrifice _fresh = new(GasModel.FreshGamma, GasModel.RegularisationRatio);
    private readonly LaneOrifice _burnt = new(GasModel.BurntGamma, GasModel.RegularisationRatio);
    private readonly Vector256<double> _inversePort;
    private readonly Vector256<double> _inverseNode;
    private readonly Vector256<double> _ambientPressure;
    private readonly Vector256<double> _inletGasTemperature;
    private readonly Vector256<double> _inletEnthalpy;
    private readonly Vector256<double> _exhaustGasTemperature;
    private readonly Vector256<double> _exhaustEnthalpy;
    private readonly Vector256<double> _heatPerAir;
    private readonly Vector256<double> _wallTemperature;
    private readonly ChainStage[] _first;
    private readonly ChainStage[] _second;
    private readonly ChainState[] _k1;
    private readonly ChainState[] _trial;
    private readonly Vector256<double>[] _columnStar;
    private readonly NodeStage _node;
    private CycleTotals _totals = null!;
    private LaneConditions _lanes = null!;
    private AirColumn[] _barrels = [];
    private AirColumn _runner;
    private Vector256<double> _exhaustPressure;

    internal GroupIntegrator(GroupSetting setting, AmbientAir ambient)
    {
        _setting = setting;
        _tables = setting.Tables;
        var intake = setting.Engine.Intake;
        var r = ambient.GasConstantJoulesPerKilogramKelvin;
        _gas = new GasLanes(r);
        _inversePort = Vector256.Create(1 / intake.PortVolumeCubicMetres);
        _inverseNode = Vector256.Create(setting.Shared ? 1 / setting.SharedVolume : 0);
        _ambientPressure = Vector256.Create(ambient.PressurePascals);
        var inlet = ambient.TemperatureKelvin
            + intake.HeatingEffectiveness * (intake.WallTemperatureKelvin - ambient.TemperatureKelvin) - intake.EvaporationCoolingKelvin;
        _inletGasTemperature = Vector256.Create(r * inlet);
        _inletEnthalpy = Vector256.Create(GasModel.FreshHeat(r) * (inlet - GasModel.ReferenceTemperatureKelvin) + r * inlet);
        var exhaust = setting.Engine.Exhaust.GasTemperatureKelvin;
        _exhaustGasTemperature = Vector256.Create(r * exhaust);
        _exhaustEnthalpy = Vector256.Create(GasModel.BurntHeat(r) * (exhaust - GasModel.ReferenceTemperatureKelvin) + r * exhaust);
        _heatPerAir = Vector256.Create(setting.Engine.Combustion.HeatPerAirJoulesPerKilogram);
        _wallTemperature = Vector256.Create(setting.Engine.Combustion.WallTemperatureKelvin);
        var n = setting.Cylinders;
        (_first, _second, _k1, _trial, _columnStar) =
            (new ChainStage[n], new ChainStage[n], new ChainState[n], new ChainState[n], new Vector256<double>[n]);
        _node = new NodeStage(setting.Barrels.Length);
    }

    /// <summary>R·T of the air that enters, J/kg.</summary>
    internal double InletGasTemperature => _inletGasTemperature[0];

    /// <summary>Runs one cycle from a state, leaving the state at its end.</summary>
    /// <param name="state">State, changed in place.</param>
    /// <param name="lanes">Operating points.</param>
    /// <param name="columns">Barrels as columns, at these openings.</param>
    /// <param name="runner">Runner column behind a shared volume.</param>
    /// <param name="totals">Receives totals and wave forms.</param>
    internal void Cycle(GroupState state, LaneConditions lanes, AirColumn[] columns, in AirColumn runner, CycleTotals totals)
    {
        (_lanes, _barrels, _runner, _totals) = (lanes, columns, runner, totals);
        totals.Clear();
        var back = Vector256.Create(_setting.Engine.Exhaust.BackPressureCoefficient);
        _exhaustPressure = _ambientPressure + back * state.ExhaustFlow * state.ExhaustFlow;
        for (var i = 0; i < _tables.Steps; i++)
        {
            if (_setting.Shared)
            {
                SharedStep(state, i, totals);
            }
            else
            {
                SingleStep(ref state.Chains[0], i, totals);
            }
        }

        var seconds = lanes.StepSeconds * _tables.Steps;
        state.ExhaustFlow = totals.ExhaustMass / (seconds * _setting.Cylinders);
    }

    // One barrel on one cylinder: the column starts at ambient.
    private void SingleStep(ref ChainState chain, int i, CycleTotals totals)
    {
        var h = _lanes.StepSeconds;
        ref var one = ref _first[0];
        ref var two = ref _second[0];
        Evaluate(ref one, chain, 0, i, _ambientPressure, _inletGasTemperature, _inletEnthalpy, Vector256<double>.Zero, _barrels[0]);
        Prepare(ref one, 0, i);
        ref var k1 = ref _k1[0];
        k1 = FirstRates(ref one, Vector256<double>.Zero, out var star);
        _trial[0] = chain.Plus(k1, h);
        Evaluate(ref two, _trial[0], 0, i + 1, _ambientPressure, _inletGasTemperature, _inletEnthalpy, Vector256<double>.Zero, _barrels[0]);
        var k2 = SecondRates(one, two, k1, star, Vector256<double>.Zero, out var star2);
        chain = chain.Plus(k1, h * 1.5).Plus(k2, h * 0.5);
        var flow = (star * 1.5 + star2 * 0.5) * h;
        totals.Flow[0][i] = one.Column;
        totals.Down[i] = one.Port.Pressure;
        totals.Air[0] += flow;
        totals.Back[0] += Vector256.Max(-flow, Vector256<double>.Zero);
        totals.InletEnthalpy += (star * one.ColumnEnthalpy * 1.5 + (SecondCarried(one, two, star, star2) * 0.5)) * h;
    }

    // Enthalpy with which the second stage's column flow enters: new flow with new enthalpy, corrections with old.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> SecondCarried(in ChainStage one, in ChainStage two, Vector256<double> star, Vector256<double> star2) =>
        two.Column * two.ColumnEnthalpy + (star2 - two.Column) * one.ColumnEnthalpy;

    private void SharedStep(GroupState state, int i, CycleTotals totals)
    {
        var h = _lanes.StepSeconds;
        _node.Begin(_gas, state.Node, _inverseNode);
        EvaluateChains(_first, state.Chains, i);
        _node.EvaluateBarrels(_fresh, state.Barrels, _barrels, _ambientPressure, _inletGasTemperature, _inletEnthalpy);
        for (var c = 0; c < _first.Length; c++)
        {
            Prepare(ref _first[c], c, i);
        }

        _node.Prepare(_gas, _inverseNode, _first, h * Gamma);
        FirstShared(state, h);
        _node.EvaluateTrial(_gas, _inverseNode, _fresh, _barrels, _ambientPressure, _inletGasTemperature, _inletEnthalpy);
        EvaluateChains(_second, _trial, i + 1);
        SecondShared(state, h);
        for (var b = 0; b < state.Barrels.Length; b++)
        {
            var flow = _node.Advanced(b) * h;
            totals.Flow[b][i] = _node.Flow(b);
            totals.Air[b] += flow;
            totals.Back[b] += Vector256.Max(-flow, Vector256<double>.Zero);
            totals.InletEnthalpy += _node.AdvancedEnthalpy(b) * h;
        }

        totals.Down[i] = _node.StartPressure;
    }

    private void FirstShared(GroupState state, Vector256<double> h)
    {
        var rate = _node.SolveFirst(_gas, _inverseNode, _first, this);
        for (var c = 0; c < _first.Length; c++)
        {
            _k1[c] = FirstRates(ref _first[c], rate, out _columnStar[c]);
            _trial[c] = state.Chains[c].Plus(_k1[c], h);
        }

        _node.AdvanceFirst(_first, _columnStar, state, rate, h);
    }

    private void SecondShared(GroupState state, Vector256<double> h)
    {
        var rate = _node.SolveSecond(_gas, _inverseNode, _first, _second, _k1, this);
        for (var c = 0; c < _first.Length; c++)
        {
            var k2 = SecondRates(_first[c], _second[c], _k1[c], _columnStar[c], rate, out var star2);
            state.Chains[c] = state.Chains[c].Plus(_k1[c], h * 1.5).Plus(k2, h * 0.5);
            _node.TakeSecond(_first[c], _second[c], star2);
        }

        _node.AdvanceSecond(state, h);
    }

    private void EvaluateChains(ChainStage[] stages, ChainState[] chains, int i)
    {
        for (var c = 0; c < stages.Length; c++)
        {
            Evaluate(
                ref stages[c], chains[c], c, i, _node.Pressure, _node.GasTemperature, _node.Enthalpy, _node.BurntFraction, _runner);
        }
    }

    private int Index(int cylinder, int i)
    {
        var at = (_setting.StartIndex + i - _setting.Shifts[cylinder]) % _tables.Steps;
        return at < 0 ? at + _tables.Steps : at;
    }

    private void Evaluate(
        ref ChainStage stage, in ChainState s, int cylinder, int i, Vector256<double> inletPressure, Vector256<double> inletGas, Vector256<double> inletEnthalpy, Vector256<double> inletBurnt, in AirColumn column)
    {
        var at = Index(cylinder, i);
        stage.Cylinder.Mass = s.CylinderMass;
        stage.Cylinder.Burnt = s.CylinderBurnt;
        stage.Cylinder.Energy = s.CylinderEnergy;
        stage.Cylinder.Update(_gas, Vector256.Create(1 / _tables.Volume[at]));
        stage.Port.Mass = s.PortMass;
        stage.Port.Burnt = s.PortBurnt;
        stage.Port.Energy = s.PortEnergy;
        stage.Port.Update(_gas, _inversePort);
        Valves(ref stage, at);
        InCylinder(ref stage, at);

        var rate = column.Rate(_fresh, s.Flow, inletPressure, inletGas, stage.Port.Pressure, stage.Port.GasTemperature);
        var inward = Vector256.GreaterThanOrEqual(s.Flow, Vector256<double>.Zero);
        stage.Column = s.Flow;
        stage.ColumnEnthalpy = Vector256.ConditionalSelect(inward, inletEnthalpy, stage.Port.Enthalpy);
        stage.ColumnBurnt = Vector256.ConditionalSelect(inward, inletBurnt, stage.Port.BurntFraction);
        stage.ColumnRate = rate.Rate;
        (stage.ColumnOnFlow, stage.ColumnOnInlet, stage.ColumnOnPort) = (rate.OnFlow, rate.OnInlet, rate.OnOutlet);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Valves(ref ChainStage stage, int at)
    {
        var next = at + 1;
        var (intakeArea, exhaustArea) = (_tables.IntakeArea[at], _tables.ExhaustArea[at]);
        var intakeWide = Math.Max(intakeArea, _tables.IntakeArea[next]);
        var exhaustWide = Math.Max(exhaustArea, _tables.ExhaustArea[next]);
        stage.Intake = stage.IntakeOnPort = stage.IntakeOnCylinder = Vector256<double>.Zero;
        stage.Exhaust = stage.ExhaustOnCylinder = Vector256<double>.Zero;
        if (intakeWide > 0)
        {
            var flux = _fresh.Between(stage.Port.Pressure, stage.Port.GasTemperature, stage.Cylinder.Pressure, stage.Cylinder.GasTemperature);
            stage.Intake = flux.Flux * intakeArea;
            stage.IntakeOnPort = flux.OnA * intakeWide;
            stage.IntakeOnCylinder = flux.OnB * intakeWide;
        }

        if (exhaustWide > 0)
        {
            var flux = _burnt.Between(stage.Cylinder.Pressure, stage.Cylinder.GasTemperature, _exhaustPressure, _exhaustGasTemperature);
            stage.Exhaust = flux.Flux * exhaustArea;
            stage.ExhaustOnCylinder = flux.OnA * exhaustWide;
        }

        var inward = Vector256.GreaterThanOrEqual(stage.Intake, Vector256<double>.Zero);
        stage.IntakeEnthalpy = Vector256.ConditionalSelect(inward, stage.Port.Enthalpy, stage.Cylinder.Enthalpy);
        stage.IntakeBurnt = Vector256.ConditionalSelect(inward, stage.Port.BurntFraction, stage.Cylinder.BurntFraction);
        var outward = Vector256.GreaterThanOrEqual(stage.Exhaust, Vector256<double>.Zero);
        stage.ExhaustEnthalpy = Vector256.ConditionalSelect(outward, stage.Cylinder.Enthalpy, _exhaustEnthalpy);
        stage.ExhaustBurnt = Vector256.ConditionalSelect(outward, stage.Cylinder.BurntFraction, Vector256<double>.One);
    }

    // breathing (9), (10): heat release and Hohenberg's wall heat; (11): work
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void InCylinder(ref ChainStage stage, int at)
    {
        const double pressureExponent = 0.8, barInPascals = 1e5;
        stage.Work = stage.Cylinder.Pressure * (_lanes.DegreesPerSecond * _tables.VolumeSlope[at]);
        stage.Burn = Vector256.Max(stage.Cylinder.Mass - stage.Cylinder.Burnt, Vector256<double>.Zero)
            * (_lanes.DegreesPerSecond * _tables.BurnRate[at]);

        // p^0.8 T^-0.4 as one power of p²/T
        var bar = stage.Cylinder.Pressure / barInPascals;
        var power = Vector256.Exp(Vector256.Log(bar * bar / stage.Cylinder.Temperature) * (pressureExponent / 2));
        var wall = power * _lanes.WallSpeedFactor * _tables.HeatArea[at];
        stage.Heat = stage.Burn * _heatPerAir + wall * (_wallTemperature - stage.Cylinder.Temperature);
    }

    private void Prepare(ref ChainStage stage, int cylinder, int i)
    {
        var inverse = Vector256.Create(1 / _tables.Volume[Index(cylinder, i)]);
        stage.InverseVolume = inverse;
        stage.Elimination.Prepare(stage, _gas, inverse, _inversePort, _lanes.StepSeconds * Gamma);
    }

    private ChainState FirstRates(ref ChainStage stage, Vector256<double> inletRate, out Vector256<double> columnStar)
    {
        var a = _lanes.StepSeconds * Gamma;
        var rates = stage.Rates();
        var (cylinder, port) = PressureRates(stage, rates);
        var correction = stage.Elimination.Solve(cylinder, port, rates.Flow, inletRate);
        columnStar = stage.Column + a * correction.Column;
        stage.ExhaustStar = stage.Exhaust + a * correction.Exhaust;
        var k = rates.Plus(stage.Carried(a * correction.Intake, a * correction.Exhaust, a * correction.Column), Vector256<double>.One);
        k.Flow = correction.Column;
        return k;
    }

    private ChainState SecondRates(
        in ChainStage one, in ChainStage two, in ChainState k1, Vector256<double> columnStar, Vector256<double> inletRate, out Vector256<double> columnStar2)
    {
        var a = _lanes.StepSeconds * Gamma;
        var rates = two.Rates().Plus(k1, Vector256.Create(-2.0));
        var (cylinder, port) = PressureRates(one, rates);
        var correction = one.Elimination.Solve(cylinder, port, rates.Flow, inletRate);
        columnStar2 = two.Column - columnStar * 2.0 + a * correction.Column;
        Account(one, two, two.Exhaust - one.ExhaustStar * 2.0 + a * correction.Exhaust);
        var k = rates.Plus(one.Carried(a * correction.Intake, a * correction.Exhaust, a * correction.Column), Vector256<double>.One);
        k.Flow = correction.Column;
        return k;
    }

    // Adds what leaves, heats and works over the step with the weights of the method, so that the balances can be checked.
    private void Account(in ChainStage one, in ChainStage two, Vector256<double> exhaustStar2)
    {
        var h = _lanes.StepSeconds;
        _totals.ExhaustMass += h * (one.ExhaustStar * 1.5 + exhaustStar2 * 0.5);
        _totals.ExhaustEnthalpy += h * (one.ExhaustStar * one.ExhaustEnthalpy * 1.5
            + (two.Exhaust * two.ExhaustEnthalpy + (exhaustStar2 - two.Exhaust) * one.ExhaustEnthalpy) * 0.5);
        _totals.Heat += h * (one.Heat + two.Heat) * 0.5;
        _totals.Work += h * (one.Work + two.Work) * 0.5;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private (Vector256<double> Cylinder, Vector256<double> Port) PressureRates(in ChainStage stage, in ChainState rates) => (
        stage.Cylinder.PressureRate(_gas, stage.InverseVolume, rates.CylinderMass, rates.CylinderBurnt, rates.CylinderEnergy),
        stage.Port.PressureRate(_gas, _inversePort, rates.PortMass, rates.PortBurnt, rates.PortEnergy));

    /// <summary>Rate of a chain's column in the first stage with the inlet pressure held.</summary>
    internal Vector256<double> HeldFirst(in ChainStage one)
    {
        var rates = one.Rates();
        var (cylinder, port) = PressureRates(one, rates);
        return one.Elimination.ColumnHeld(cylinder, port, rates.Flow);
    }

    /// <summary>Rate of a chain's column in the second stage with the inlet pressure held.</summary>
    internal Vector256<double> HeldSecond(in ChainStage one, in ChainStage two, in ChainState k1)
    {
        var rates = two.Rates().Plus(k1, Vector256.Create(-2.0));
        var (cylinder, port) = PressureRates(one, rates);
        return one.Elimination.ColumnHeld(cylinder, port, rates.Flow);
    }
}
