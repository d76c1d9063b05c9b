using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Tickover.Physics.Air;
using Tickover.Physics.Flow;
using Tickover.Physics.Metering;

namespace Tickover.Physics.Breathing;

/// <summary>Turns the air flow of a barrel into the pressures its fuel circuits feel: breathing (15) to (18).</summary>
internal sealed class SignalBuilder
{
    private const int ThroatIterations = 4;
    private const double BoosterLimit = 0.4717; // depression at which the auxiliary venturi is sonic, of ambient: 1 − 0.5283

    private readonly LaneOrifice _orifice = new(GasModel.FreshGamma, GasModel.RegularisationRatio);
    private readonly double _ambient;
    private readonly double _throatFlow;       // Cd A p0 / sqrt(R T0), kg/s
    private readonly double _gain;
    private readonly double _reverseGain;
    private readonly double _upstreamInertance;
    private readonly double _runnerInertance;
    private readonly double _chokeLoss;        // k / (2 ρ A²), Pa/(kg/s)²
    private readonly double _boreHead;
    private readonly double _runnerLoss;

    internal SignalBuilder(BarrelAirWay way, IntakeTract intake, AmbientAir ambient, bool shared)
    {
        _ambient = ambient.PressurePascals;
        var choke = BarrelFlow.ChokeArea(way);
        var rt = ambient.GasConstantJoulesPerKilogramKelvin * ambient.TemperatureKelvin;
        _throatFlow = way.ChokeDischargeCoefficient * choke * _ambient / Math.Sqrt(rt);
        _gain = way.AuxiliaryVenturiGain;
        _reverseGain = way.AuxiliaryVenturiGain * way.ReverseSignalFactor;
        _upstreamInertance = BarrelFlow.Upstream(way, intake);
        var head = 0.5 / ambient.DensityKilogramsPerCubicMetre;
        _chokeLoss = head * way.ChokeLossCoefficient / (choke * choke);
        var bore = Circle.Area(way.ThrottleBoreMetres);
        _boreHead = head / (bore * bore);
        if (!shared)
        {
            var runner = Circle.Area(intake.RunnerDiameterMetres);
            _runnerInertance = intake.RunnerLengthMetres / runner;
            _runnerLoss = head * intake.RunnerLossCoefficient / (runner * runner);
        }
    }

    /// <summary>Builds the signals from flow and pressure behind the plates.</summary>
    internal BarrelSignals Build(Vector256<double>[] flow, Vector256<double>[] behind, Vector256<double> stepSeconds)
    {
        var n = flow.Length;
        var signals = new BarrelSignals(n);
        var perStep = Vector256.Create(0.5) / stepSeconds;
        var ambient = Vector256.Create(_ambient);
        for (var i = 0; i < n; i++)
        {
            var w = flow[i];
            var rate = (flow[i + 1 < n ? i + 1 : 0] - flow[i > 0 ? i - 1 : n - 1]) * perStep;
            var magnitude = Vector256.Abs(w);
            var square = w * magnitude;
            var inertia = rate * _upstreamInertance;                                        // breathing (16)
            signals.Flow[i] = w;
            signals.Depression[i] = Limited(Throat(w, magnitude)) + inertia;                // breathing (17)
            signals.Up[i] = ambient - square * _chokeLoss - w * w * _boreHead - inertia;    // breathing (18)
            signals.Down[i] = behind[i] + rate * _runnerInertance + square * _runnerLoss;
        }

        return signals;
    }

    // breathing (15): depression in the throat from the flow, by Newton on G(r) = y²; then the auxiliary venturi's gain
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector256<double> Throat(Vector256<double> w, Vector256<double> magnitude)
    {
        var y = magnitude / _throatFlow;
        var target = y * y;
        var one = Vector256<double>.One;
        var ratio = Vector256.Max(one - target * 0.5, Vector256.Create(0.6));
        for (var k = 0; k < ThroatIterations; k++)
        {
            var (g, slope) = _orifice.Square(ratio);
            ratio = Vector256.Min(Vector256.Max(ratio - (g - target) / slope, Vector256.Create(0.53)), one);
        }

        var gain = Vector256.ConditionalSelect(
            Vector256.GreaterThanOrEqual(w, Vector256<double>.Zero), Vector256.Create(_gain), Vector256.Create(_reverseGain));
        return (one - ratio) * gain * _ambient;
    }

    // The auxiliary venturi cannot draw below its own sonic depression.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector256<double> Limited(Vector256<double> depression)
    {
        var x = depression / (BoosterLimit * _ambient);
        var x2 = x * x;
        return depression / Vector256.Sqrt(Vector256.Sqrt(Vector256<double>.One + x2 * x2));
    }
}
