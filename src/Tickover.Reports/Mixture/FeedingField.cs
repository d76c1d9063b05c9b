using Tickover.Reports.Charts;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>Which circuit feeds most, on the fine grid, and the lines where one hands over to the next.</summary>
internal sealed class FeedingField
{
    private readonly Field _idle;
    private readonly Field _main;
    private readonly Field _correcting;

    internal FeedingField(CoarseMap coarse, Field fine)
    {
        _idle = Border(coarse, fine, c => c == FuelCircuit.Idle, p => Share(p, p.IdleFuelKilogramsPerSecond));
        _main = Border(
            coarse, fine, c => c is FuelCircuit.Main or FuelCircuit.MainCorrecting, p => Share(p, p.MainFuelKilogramsPerSecond));
        _correcting = Border(coarse, fine, c => c == FuelCircuit.MainCorrecting, p => p.WellDropMetres);
    }

    internal FuelCircuit At(int i, int j)
    {
        if (_main.Values[i, j] >= 0)
        {
            return _correcting.Values[i, j] >= 0 ? FuelCircuit.MainCorrecting : FuelCircuit.Main;
        }

        return _idle.Values[i, j] >= 0 ? FuelCircuit.Idle : FuelCircuit.Progression;
    }

    internal FuelCircuit At(ChartPoint place)
    {
        if (_main.At(place) >= 0)
        {
            return _correcting.At(place) >= 0 ? FuelCircuit.MainCorrecting : FuelCircuit.Main;
        }

        return _idle.At(place) >= 0 ? FuelCircuit.Idle : FuelCircuit.Progression;
    }

    /// <summary>The lines of hand-over, each once: where the main circuit feeds, the idle circuit's own border is not drawn.</summary>
    internal IReadOnlyList<Polyline> HandOvers()
    {
        var idle = _idle.Map((i, j) => _main.Values[i, j] >= 0 ? double.NaN : _idle.Values[i, j]);
        var correcting = _correcting.Map((i, j) => _main.Values[i, j] < 0 ? double.NaN : _correcting.Values[i, j]);
        return [.. new[] { idle, _main, correcting }.SelectMany(f => new ContourTracer(f).Trace(0))];
    }

    private static Field Border(CoarseMap coarse, Field fine, Func<FuelCircuit, bool> feeds, Func<BarrelPoint, double> indicator)
    {
        // Without fuel nothing feeds; the neighbours decide then
        var flags = coarse.Figure(p => p.FuelKilogramsPerSecond > 0 ? (feeds(p.Feeding) ? 1 : 0) : double.NaN);
        return SmoothFlag.Refine(flags, coarse.Figure(p => p.FuelKilogramsPerSecond > 0 ? indicator(p) : double.NaN), fine);
    }

    // How far one circuit's share lies above the largest of the others'
    private static double Share(BarrelPoint point, double own)
    {
        var largest = 0.0;
        foreach (var fuel in (ReadOnlySpan<double>)
            [point.MainFuelKilogramsPerSecond, point.ProgressionFuelKilogramsPerSecond, point.IdleFuelKilogramsPerSecond])
        {
            largest = fuel != own && fuel > largest ? fuel : largest;
        }

        return (own - largest) / point.FuelKilogramsPerSecond;
    }
}
