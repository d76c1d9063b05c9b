using System.Runtime.Intrinsics;
using Tickover.Physics.Flow;

namespace Tickover.Physics.Breathing;

/// <summary>The shared volume and its barrels through one step of the integrator: breathing (14).</summary>
internal sealed class NodeStage(int barrels)
{
    private readonly BarrelStage[] _barrels = new BarrelStage[barrels];
    private GasVolume _one;
    private GasVolume _two;
    private bool _second;
    private Vector256<double> _a;
    private Vector256<double> _pivot;
    private NodeRates _k1;
    private NodeRates _k2;
    private Vector256<double> _rate2;

    internal Vector256<double> Pressure => _second ? _two.Pressure : _one.Pressure;

    internal Vector256<double> GasTemperature => _second ? _two.GasTemperature : _one.GasTemperature;

    internal Vector256<double> Enthalpy => _second ? _two.Enthalpy : _one.Enthalpy;

    internal Vector256<double> BurntFraction => _second ? _two.BurntFraction : _one.BurntFraction;

    /// <summary>Pressure at the start of the step, Pa.</summary>
    internal Vector256<double> StartPressure => _one.Pressure;

    internal Vector256<double> Flow(int barrel) => _barrels[barrel].Flow;

    internal Vector256<double> Advanced(int barrel) => _barrels[barrel].Star * 1.5 + _barrels[barrel].Star2 * 0.5;

    internal Vector256<double> AdvancedEnthalpy(int barrel)
    {
        ref readonly var b = ref _barrels[barrel];
        return b.Star * b.Enthalpy * 1.5 + (b.Flow2 * b.Enthalpy2 + (b.Star2 - b.Flow2) * b.Enthalpy) * 0.5;
    }

    internal void Begin(in GasLanes gas, in GasVolume node, Vector256<double> inverseVolume)
    {
        _second = false;
        (_one.Mass, _one.Burnt, _one.Energy) = (node.Mass, node.Burnt, node.Energy);
        _one.Update(gas, inverseVolume);
    }

    internal void EvaluateBarrels(
        in LaneOrifice orifice, Vector256<double>[] flows, AirColumn[] columns, Vector256<double> pressure, Vector256<double> gasTemperature, Vector256<double> enthalpy)
    {
        for (var b = 0; b < _barrels.Length; b++)
        {
            ref var barrel = ref _barrels[b];
            barrel.Flow = flows[b];
            barrel.Rate = columns[b].Rate(orifice, flows[b], pressure, gasTemperature, _one.Pressure, _one.GasTemperature);
            (barrel.Enthalpy, barrel.Burnt) = Carried(flows[b], enthalpy, _one);
        }
    }

    internal void Prepare(in GasLanes gas, Vector256<double> inverseVolume, ChainStage[] chains, Vector256<double> a)
    {
        _a = a;
        var one = Vector256<double>.One;
        var diagonal = one;
        foreach (ref var b in _barrels.AsSpan())
        {
            b.Pivot = one / (one - a * b.Rate.OnFlow);
            diagonal -= a * By(gas, inverseVolume, b.Burnt, b.Enthalpy) * a * b.Rate.OnOutlet * b.Pivot;
        }

        foreach (ref readonly var c in chains.AsSpan())
        {
            diagonal += a * By(gas, inverseVolume, c.ColumnBurnt, c.ColumnEnthalpy) * c.Elimination.ColumnPerInlet;
        }

        _pivot = one / diagonal;
    }

    internal Vector256<double> SolveFirst(in GasLanes gas, Vector256<double> inverseVolume, ChainStage[] chains, GroupIntegrator integrator)
    {
        var rates = default(NodeRates);
        var sum = Vector256<double>.Zero;
        foreach (ref readonly var b in _barrels.AsSpan())
        {
            rates.Add(b.Flow, b.Burnt, b.Enthalpy);
            sum += By(gas, inverseVolume, b.Burnt, b.Enthalpy) * b.Rate.Rate * b.Pivot;
        }

        foreach (ref readonly var c in chains.AsSpan())
        {
            rates.Add(-c.Column, c.ColumnBurnt, c.ColumnEnthalpy);
            sum -= By(gas, inverseVolume, c.ColumnBurnt, c.ColumnEnthalpy) * integrator.HeldFirst(c);
        }

        return _pivot * (_one.PressureRate(gas, inverseVolume, rates.Mass, rates.Burnt, rates.Energy) + _a * sum);
    }

    internal void AdvanceFirst(ChainStage[] chains, Vector256<double>[] columnStar, GroupState state, Vector256<double> rate, Vector256<double> h)
    {
        _k1 = default;
        foreach (ref var b in _barrels.AsSpan())
        {
            b.K1 = (b.Rate.Rate + _a * b.Rate.OnOutlet * rate) * b.Pivot;
            b.Star = b.Flow + _a * b.K1;
            b.Flow2 = b.Flow + h * b.K1;
            _k1.Add(b.Star, b.Burnt, b.Enthalpy);
        }

        for (var c = 0; c < chains.Length; c++)
        {
            _k1.Add(-columnStar[c], chains[c].ColumnBurnt, chains[c].ColumnEnthalpy);
        }

        _two.Mass = state.Node.Mass + h * _k1.Mass;
        _two.Burnt = state.Node.Burnt + h * _k1.Burnt;
        _two.Energy = state.Node.Energy + h * _k1.Energy;
    }

    internal void EvaluateTrial(
        in GasLanes gas, Vector256<double> inverseVolume, in LaneOrifice orifice, AirColumn[] columns, Vector256<double> pressure, Vector256<double> gasTemperature, Vector256<double> enthalpy)
    {
        _second = true;
        _two.Update(gas, inverseVolume);
        for (var b = 0; b < _barrels.Length; b++)
        {
            ref var barrel = ref _barrels[b];
            barrel.Rate2 = columns[b].Rate(orifice, barrel.Flow2, pressure, gasTemperature, _two.Pressure, _two.GasTemperature).Rate;
            (barrel.Enthalpy2, barrel.Burnt2) = Carried(barrel.Flow2, enthalpy, _two);
        }
    }

    internal Vector256<double> SolveSecond(
        in GasLanes gas, Vector256<double> inverseVolume, ChainStage[] first, ChainStage[] second, ChainState[] k1, GroupIntegrator integrator)
    {
        var rates = default(NodeRates);
        var sum = Vector256<double>.Zero;
        foreach (ref readonly var b in _barrels.AsSpan())
        {
            rates.Add(b.Flow2, b.Burnt2, b.Enthalpy2);
            sum += By(gas, inverseVolume, b.Burnt, b.Enthalpy) * (b.Rate2 - b.K1 * 2.0) * b.Pivot;
        }

        for (var c = 0; c < first.Length; c++)
        {
            rates.Add(-second[c].Column, second[c].ColumnBurnt, second[c].ColumnEnthalpy);
            sum -= By(gas, inverseVolume, first[c].ColumnBurnt, first[c].ColumnEnthalpy) * integrator.HeldSecond(first[c], second[c], k1[c]);
        }

        var (mass, burnt, energy) = (rates.Mass - _k1.Mass * 2.0, rates.Burnt - _k1.Burnt * 2.0, rates.Energy - _k1.Energy * 2.0);
        _k2 = default;
        _rate2 = _pivot * (_one.PressureRate(gas, inverseVolume, mass, burnt, energy) + _a * sum);
        return _rate2;
    }

    internal void TakeSecond(in ChainStage one, in ChainStage two, Vector256<double> star2)
    {
        _k2.Add(-two.Column, two.ColumnBurnt, two.ColumnEnthalpy);
        _k2.Add(two.Column - star2, one.ColumnBurnt, one.ColumnEnthalpy);
    }

    internal void AdvanceSecond(GroupState state, Vector256<double> h)
    {
        for (var i = 0; i < _barrels.Length; i++)
        {
            ref var b = ref _barrels[i];
            var k2 = (b.Rate2 - b.K1 * 2.0 + _a * b.Rate.OnOutlet * _rate2) * b.Pivot;
            b.Star2 = b.Flow2 - b.Star * 2.0 + _a * k2;
            _k2.Add(b.Flow2, b.Burnt2, b.Enthalpy2);
            _k2.Add(b.Star2 - b.Flow2, b.Burnt, b.Enthalpy);
            state.Barrels[i] += h * (b.K1 * 1.5 + k2 * 0.5);
        }

        state.Node.Mass += h * (_k1.Mass * 1.5 + _k2.Mass * 0.5);
        state.Node.Burnt += h * (_k1.Burnt * 1.5 + _k2.Burnt * 0.5);
        state.Node.Energy += h * (_k1.Energy * 1.5 + _k2.Energy * 0.5);
    }

    private static (Vector256<double> Enthalpy, Vector256<double> Burnt) Carried(Vector256<double> flow, Vector256<double> inlet, in GasVolume node)
    {
        var inward = Vector256.GreaterThanOrEqual(flow, Vector256<double>.Zero);
        return (
            Vector256.ConditionalSelect(inward, inlet, node.Enthalpy),
            Vector256.ConditionalSelect(inward, Vector256<double>.Zero, node.BurntFraction));
    }

    private Vector256<double> By(in GasLanes gas, Vector256<double> inverseVolume, Vector256<double> burnt, Vector256<double> enthalpy) =>
        _one.PressureRate(gas, inverseVolume, Vector256<double>.One, burnt, enthalpy);
}
