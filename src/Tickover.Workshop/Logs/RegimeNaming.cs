namespace Tickover.Workshop.Logs;

/// <summary>Names what an engine does by opening, speed, pressure and road speed. The openings follow the trade reference 3.1 and are common practice.</summary>
internal static class RegimeNaming
{
    private const double AtStop = 1.2;                   // degrees over the stop
    private const double ProgressionEnds = 14;           // degrees
    private const double ChangeoverEnds = 20;
    private const double FullLoadBegins = 48;            // degrees, as the targets have it; one barrel a cylinder comes near the barometer far earlier
    private const double NearBarometer = 0.93;
    private const double FastestIdle = 1400;             // rpm
    private const double Rolling = 2;                    // m/s
    private const double IdlePressure = 0.50;            // of the barometer: idle lies between a quarter and a half
    private const double ProgressionPressure = 0.60;
    private const double ChangeoverPressure = 0.68;

    internal static Regime Of(in LogMoment at, double stop, double barometer)
    {
        if (!double.IsFinite(at.Degrees))
        {
            return ByPressure(at, barometer);
        }

        if (at.Degrees <= stop + AtStop)
        {
            return IsIdle(at) ? Regime.Idle : Regime.Overrun;
        }

        if (at.Degrees >= FullLoadBegins)
        {
            return Regime.FullLoad;
        }

        return at.Degrees < ProgressionEnds ? Regime.Progression : at.Degrees < ChangeoverEnds ? Regime.Changeover : Regime.Cruise;
    }

    private static bool IsIdle(in LogMoment at) => at.SpeedRpm < FastestIdle && !(at.RoadMetresPerSecond > Rolling);

    private static Regime ByPressure(in LogMoment at, double barometer)
    {
        var part = at.ManifoldPascals / barometer;
        if (part > NearBarometer)
        {
            return Regime.FullLoad;
        }

        if (IsIdle(at) && part < IdlePressure)
        {
            return Regime.Idle;
        }

        return part < 0.25 ? Regime.Overrun : part < ProgressionPressure ? Regime.Progression : part < ChangeoverPressure ? Regime.Changeover : Regime.Cruise;
    }
}
