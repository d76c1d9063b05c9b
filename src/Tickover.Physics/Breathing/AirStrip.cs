using System.Runtime.Intrinsics;
using Tickover.Physics.Air;
using Tickover.Physics.Flow;
using Tickover.Physics.Metering;

namespace Tickover.Physics.Breathing;

/// <summary>Four openings solved together, speed after speed, each starting from the last.</summary>
internal sealed class AirStrip
{
    private const int Lanes = 4;
    private const double ChokedFlux = 0.684731;   // Ψ at the critical ratio, γ 1.4: flow (4)
    private const double SmallestArea = 1e-8;     // m²: the leak of a plate that is fully shut, so that a column always has a way

    private const double AirWeight = 0.2;         // five times the tolerance on air in against gas out, of the air
    private const double SmallestAir = 1e-12;     // kg a cycle: below it there is nothing to weigh against

    private readonly GroupSetting _setting;
    private readonly AmbientAir _ambient;
    private readonly OperatingGrid _grid;
    private readonly AirSideSettings _settings;
    private readonly int _block;
    private readonly IReadOnlyList<GroupSetting> _levels;
    private readonly GroupIntegrator[] _integrators;
    private readonly AirColumn[] _columns;
    private readonly SignalBuilder[] _signals;
    private readonly AirColumn _runner;
    private readonly GroupState _state;
    private readonly PeriodicCycle[] _periodic;
    private readonly double[] _storedMass = new double[Lanes];
    private readonly double[] _storedEnergy = new double[Lanes];
    private readonly double[] _scale;
    private readonly double[][] _before;
    private bool _started;

    internal AirStrip(IReadOnlyList<GroupSetting> levels, AmbientAir ambient, OperatingGrid grid, AirSideSettings settings, int block)
    {
        (_levels, _ambient, _grid, _settings, _block) = (levels, ambient, grid, settings, block);
        var setting = _setting = levels[0];
        _integrators = [.. levels.Select(l => new GroupIntegrator(l, ambient))];
        _columns = [.. setting.Barrels.Select(b => Column(setting.Engine.Barrels[b].AirWay))];
        _signals = [.. setting.Barrels.Select(b => new SignalBuilder(setting.Engine.Barrels[b].AirWay, setting.Engine.Intake, ambient, setting.Shared))];
        _runner = Runner();
        _state = new GroupState(setting.Cylinders, setting.Barrels.Length, setting.Shared);
        _scale = new double[_state.Size];
        _before = [.. Enumerable.Range(0, Lanes).Select(_ => new double[_state.Size])];
        _periodic = [.. Enumerable.Range(0, Lanes).Select(_ => new PeriodicCycle(_state.Size))];
    }

    private double Opening(int lane) => _grid.ThrottleDegrees[Math.Min(_block * Lanes + lane, _grid.ThrottleDegrees.Count - 1)] * Math.PI / 180;

    /// <summary>Solves the four openings at one speed.</summary>
    internal AirWave Solve(int speed, AirPoint[,] points)
    {
        var rpm = _grid.SpeedsRpm[speed];
        var reference = Scale(rpm);
        if (!_started)
        {
            Start(reference);
            _started = true;
        }

        var worst = new double[Lanes];
        var cycles = 0;
        for (var level = FirstLevel(rpm); ; level++)
        {
            var tables = _levels[level].Tables;
            var lanes = new LaneConditions([rpm, rpm, rpm, rpm], _setting.Engine, tables.StepDegrees);
            var totals = new CycleTotals(tables.Steps, _setting.Barrels.Length);
            cycles += Settle(_integrators[level], lanes, totals, worst);

            // Where flow rings at the step's own pace no mixing helps; half the step does.
            if (level + 1 == _levels.Count || worst.Max() <= _settings.AcceptedResidual)
            {
                Store(speed, totals, worst, cycles, points);
                return new AirWave(
                    [.. _signals.Select((b, k) => b.Build(totals.Flow[k], totals.Down, lanes.StepSeconds))], lanes.StepSeconds);
            }
        }
    }

    // one port behind a plate fills and rings faster than a volume that several share
    private int FirstLevel(double rpm) => rpm < _settings.FinestBelowRpm && !_setting.Shared ? 2 : rpm < _settings.FineBelowRpm ? 1 : 0;

    private int Settle(GroupIntegrator integrator, LaneConditions lanes, CycleTotals totals, double[] worst)
    {
        foreach (var p in _periodic)
        {
            p.Restart();
        }

        var cycles = 0;
        do
        {
            cycles++;
            Cycle(integrator, lanes, totals, worst);
        }
        while (worst.Max() > _settings.Tolerance && cycles < _settings.MaximumCycles);

        return cycles;
    }

    private void Cycle(GroupIntegrator integrator, LaneConditions lanes, CycleTotals totals, double[] worst)
    {
        for (var l = 0; l < Lanes; l++)
        {
            _state.Read(l, _before[l]);
        }

        integrator.Cycle(_state, lanes, _columns, _runner, totals);
        Span<double> after = stackalloc double[_state.Size];
        for (var l = 0; l < Lanes; l++)
        {
            _state.Read(l, after);
            (_storedMass[l], _storedEnergy[l]) = Stored(_before[l], after);
            var air = totals.Air.Sum(a => a[l]);
            worst[l] = Math.Max(
                _periodic[l].Next(_before[l], after, _scale), AirWeight * Math.Abs(_storedMass[l]) / (Math.Abs(air) + SmallestAir));
            if (worst[l] > _settings.Tolerance)
            {
                _state.Write(l, after);
            }
        }
    }

    // Mass and energy of all volumes at the end less those at the start of a cycle.
    private (double Mass, double Energy) Stored(ReadOnlySpan<double> before, ReadOnlySpan<double> after)
    {
        var (mass, energy) = (0.0, 0.0);
        for (var c = 0; c < _setting.Cylinders; c++)
        {
            var at = c * ChainState.Components;
            mass += after[at] - before[at] + after[at + 3] - before[at + 3];
            energy += after[at + 2] - before[at + 2] + after[at + 5] - before[at + 5];
        }

        if (_setting.Shared)
        {
            var at = _setting.Cylinders * ChainState.Components + 1;
            mass += after[at] - before[at];
            energy += after[at + 2] - before[at + 2];
        }

        return (mass, energy);
    }

    private void Store(int speed, CycleTotals totals, double[] worst, int cycles, AirPoint[,] points)
    {
        for (var l = 0; l < Lanes; l++)
        {
            var throttle = _block * Lanes + l;
            if (throttle >= _grid.ThrottleDegrees.Count)
            {
                break;
            }

            var air = totals.Air.Sum(a => a[l]);
            var heat = totals.Heat[l];
            points[speed, throttle] = new AirPoint
            {
                AirKilogramsPerCycle = [.. totals.Air.Select(a => a[l])],
                BackflowKilogramsPerCycle = [.. totals.Back.Select(a => a[l])],
                WorkJoulesPerCycle = totals.Work[l] / _setting.Cylinders,
                Residual = worst[l],
                MassImbalance = (air - totals.ExhaustMass[l] - _storedMass[l]) / _scale[0],
                EnergyImbalance = (totals.InletEnthalpy[l] + heat - totals.ExhaustEnthalpy[l] - totals.Work[l] - _storedEnergy[l])
                    / (Math.Abs(heat) + Math.Abs(totals.ExhaustEnthalpy[l])),
                Cycles = cycles,
                Settled = worst[l] <= _settings.AcceptedResidual,
            };
        }
    }

    // Sizes of the numbers of the state, by which changes are judged.
    private (double Cylinder, double Port, double Node) Scale(double rpm)
    {
        var density = _ambient.DensityKilogramsPerCubicMetre;
        var cylinder = density * _setting.Engine.Cylinder.SweptVolumeCubicMetres;
        var port = density * _setting.Engine.Intake.PortVolumeCubicMetres;
        var node = density * _setting.SharedVolume;
        var specific = GasModel.FreshHeat(_ambient.GasConstantJoulesPerKilogramKelvin) * _ambient.TemperatureKelvin;
        var flow = cylinder * rpm / 120 * Math.PI;   // mean of the open half of the cycle
        var at = 0;
        for (var c = 0; c < _setting.Cylinders; c++)
        {
            foreach (var value in (ReadOnlySpan<double>)[cylinder, cylinder, cylinder * specific, port, port, port * specific, flow])
            {
                _scale[at++] = value;
            }
        }

        _scale[at++] = flow;
        if (_setting.Shared)
        {
            _scale[at++] = node;
            _scale[at++] = node;
            _scale[at++] = node * specific;
            while (at < _scale.Length)
            {
                _scale[at++] = flow;
            }
        }

        return (cylinder, port, node);
    }

    // Everything at half an atmosphere, as a first cycle that no lane is far from.
    private void Start((double Cylinder, double Port, double Node) reference)
    {
        const double part = 0.6;
        var specific = GasModel.FreshHeat(_ambient.GasConstantJoulesPerKilogramKelvin) * (_ambient.TemperatureKelvin - GasModel.ReferenceTemperatureKelvin);
        foreach (ref var chain in _state.Chains.AsSpan())
        {
            // past inlet closing the cylinder holds what it will burn
            chain.CylinderMass = Vector256.Create(part * reference.Cylinder);
            chain.CylinderBurnt = Vector256.Create(part * 0.1 * reference.Cylinder);
            chain.CylinderEnergy = Vector256.Create(part * reference.Cylinder * (specific + GasModel.FreshHeat(_ambient.GasConstantJoulesPerKilogramKelvin) * 80));
            chain.PortMass = Vector256.Create(part * reference.Port);
            chain.PortEnergy = Vector256.Create(part * reference.Port * specific);
            chain.PortBurnt = chain.Flow = Vector256<double>.Zero;
        }

        _state.Node.Mass = Vector256.Create(part * reference.Node);
        _state.Node.Energy = Vector256.Create(part * reference.Node * specific);
    }

    private AirColumn Column(BarrelAirWay way)
    {
        var intake = _setting.Engine.Intake;
        var inverse = new double[Lanes];
        for (var l = 0; l < Lanes; l++)
        {
            inverse[l] = 1 / Math.Pow(BarrelFlow.EffectiveArea(way, _setting.Shared ? null : intake, Opening(l), SmallestArea), 2);
        }

        var inertance = BarrelFlow.Inertance(way, intake, _setting.Shared);
        var sonic = BarrelFlow.ChokeArea(way) * way.ChokeDischargeCoefficient * ChokedFlux * _ambient.PressurePascals
            / Math.Sqrt(_ambient.GasConstantJoulesPerKilogramKelvin * _ambient.TemperatureKelvin);
        var into = Vector256.Create(inverse[0], inverse[1], inverse[2], inverse[3]);
        var bore = Circle.Area(way.ThrottleBoreMetres);
        return new AirColumn(
            into, into + Vector256.Create(1 / (bore * bore)), Vector256.Create(1 / inertance), Vector256.Create(1 / (sonic * sonic)));
    }

    private AirColumn Runner()
    {
        var intake = _setting.Engine.Intake;
        var area = Circle.Area(intake.RunnerDiameterMetres);
        var loss = Vector256.Create(intake.RunnerLossCoefficient / (area * area));
        return new AirColumn(loss, loss, Vector256.Create(area / intake.RunnerLengthMetres), Vector256<double>.Zero);
    }
}
