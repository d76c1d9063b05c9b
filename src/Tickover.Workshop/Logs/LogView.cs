using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Logs;

/// <summary>A log on its even clock with what is known of its car: openings in degrees, air, what of it can be used.</summary>
internal sealed class LogView
{
    private const double Running = 400;                  // rpm: below, it is cranking or standing
    private const double OilWarmth = 15;                 // K that oil may be colder than coolant when the engine is warm

    internal LogView(RoadLog log, Car car, LogPointSettings settings)
    {
        (Log, Car, Settings, Grid) = (log, car, settings, new LogGrid(log));
        Barometer = car.Ambient.Si("ambient.pressure");
        WideDegrees = 90 - car.Barrels.Max(b => b.Figures.Si("barrel.closedAngle")) * 180 / Math.PI;
        Marks = ThrottleMarks.Of(Grid, log.ThrottleScale, settings, WideDegrees, Barometer);
        var air = new EngineAir(car);
        Air = [.. Enumerable.Range(0, Grid.Count).Select(i => At(i) is var m ? air.At(m.SpeedRpm, m.Degrees, m.ManifoldPascals) : 0)];
    }

    internal RoadLog Log { get; }

    internal Car Car { get; }

    internal LogPointSettings Settings { get; }

    internal LogGrid Grid { get; }

    internal double Barometer { get; }

    internal double WideDegrees { get; }

    internal ThrottleMarks Marks { get; }

    /// <summary>Air, kg/s.</summary>
    internal double[] Air { get; }

    internal LogMoment At(int i) => new(
        Grid.SpeedRpm[i], Marks.Degrees?[i] ?? double.NaN, Grid.Manifold?[i] ?? double.NaN, Grid.Road?[i] ?? double.NaN);

    internal bool Runs(int i) => Grid.SpeedRpm[i] > Running && (double.IsFinite(At(i).Degrees) || double.IsFinite(At(i).ManifoldPascals));

    /// <summary>Whether the engine is cold as far as the log tells.</summary>
    internal bool IsCold(int i) => Grid.Coolant is { } coolant && double.IsFinite(coolant[i])
        ? coolant[i] < Settings.WarmKelvins
        : Grid.Oil is { } oil && oil[i] < Settings.WarmKelvins - OilWarmth;

    internal bool Usable(int i) => Runs(i) && !IsCold(i);

    internal Regime RegimeOf(in LogMoment moment) => RegimeNaming.Of(moment, Settings.StopDegrees, Barometer);

    /// <summary>The mean moment over cells.</summary>
    internal LogMoment Mean(int from, int to)
    {
        double rpm = 0, degrees = 0, manifold = 0, road = 0;
        for (var i = from; i < to; i++)
        {
            var m = At(i);
            (rpm, degrees, manifold, road) = (rpm + m.SpeedRpm, degrees + m.Degrees, manifold + m.ManifoldPascals, road + m.RoadMetresPerSecond);
        }

        double n = to - from;
        return new(rpm / n, degrees / n, manifold / n, road / n);
    }
}
