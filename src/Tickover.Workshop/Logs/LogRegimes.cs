namespace Tickover.Workshop.Logs;

/// <summary>Cuts a log into stretches of one regime.</summary>
internal sealed class LogRegimes(LogTrack track)
{
    private const double ShutDegrees = 1.5;
    private const double IdleRpm = 1500;
    private const double OpeningFast = 25;                // degrees/s: a tip-in
    private const double PressureFast = 40_000;           // Pa/s
    private const double TipInSeconds = 1.5;              // how long one lasts
    private const double RpmSteady = 120;                 // rpm/s
    private const double OpeningSteady = 1.5;             // degrees/s
    private const double PressureSteady = 4000;           // Pa/s
    private const double Full = 0.8;                      // of wide open
    private const double RpmApart = 150;                  // within a stretch
    private const double OpeningApart = 1.5;              // degrees
    private const double PressureApart = 4000;            // Pa
    private const double PullBin = 500;                   // rpm of a pull that make a point

    private bool ByDegrees => track.Degrees is not null;

    /// <summary>The stretches: start and end sample, regime, steady or not.</summary>
    internal IEnumerable<(int From, int To, Regime Regime, bool IsSteady)> Cut()
    {
        var (from, kind) = (0, Kind(0, double.NegativeInfinity));
        var tip = double.NegativeInfinity;
        for (var i = 1; i <= track.Log.Count; i++)
        {
            tip = i < track.Log.Count && IsTipIn(i) ? track.Log.Seconds[i] : tip;
            var next = i < track.Log.Count ? Kind(i, tip) : (Regime.Idle, false);
            if (i == track.Log.Count || next != kind || IsApart(from, i, kind))
            {
                yield return (from, i - 1, kind.Regime, kind.IsSteady);
                (from, kind) = (i, next);
            }
        }
    }

    private (Regime Regime, bool IsSteady) Kind(int i, double lastTipIn)
    {
        var rpm = track.Log.SpeedRpm[i];
        var steadyRpm = Math.Abs(track.RpmRate[i]) < RpmSteady;
        if (track.Log.Seconds[i] - lastTipIn < TipInSeconds)
        {
            return (Regime.TipIn, false);
        }

        if (track.Degrees is not { } degrees)
        {
            return ByPressure(i, steadyRpm);
        }

        var steady = steadyRpm && Math.Abs(track.LoadRate[i]) < OpeningSteady;
        return degrees[i] switch
        {
            < ShutDegrees when rpm > IdleRpm => (Regime.Overrun, false),
            < ShutDegrees => (Regime.Idle, steady),
            < 12 => (Regime.Progression, steady),
            < 20 => (Regime.Changeover, steady),
            var d when d < Full * track.WideDegrees => (d < 48 ? Regime.Cruise : Regime.FullLoad, steady),
            _ => (Regime.FullLoad, Math.Abs(track.LoadRate[i]) < 4 * OpeningSteady),
        };
    }

    private (Regime Regime, bool IsSteady) ByPressure(int i, bool steadyRpm)
    {
        if (track.Load is not { } pressure || !double.IsFinite(pressure[i]))
        {
            return (Regime.Cruise, false);
        }

        var steady = steadyRpm && Math.Abs(track.LoadRate[i]) < PressureSteady;
        return (pressure[i], track.Log.SpeedRpm[i]) switch
        {
            ( < 35_000, > (float)IdleRpm) => (Regime.Overrun, false),
            (_, < 1200) when pressure[i] < 75_000 => (Regime.Idle, steady),
            ( > 92_000, _) => (Regime.FullLoad, Math.Abs(track.LoadRate[i]) < PressureSteady),
            ( < 70_000, _) => (Regime.Progression, steady),
            _ => (Regime.Cruise, steady),
        };
    }

    private bool IsTipIn(int i) => track.LoadRate[i] > (ByDegrees ? OpeningFast : PressureFast);

    private bool IsApart(int from, int i, (Regime Regime, bool IsSteady) kind)
    {
        if (!kind.IsSteady || i >= track.Log.Count || track.Load is not { } load)
        {
            return false;
        }

        var rpm = Math.Abs(track.Log.SpeedRpm[i] - track.Log.SpeedRpm[from]);
        return kind.Regime == Regime.FullLoad
            ? rpm > PullBin
            : rpm > RpmApart || Math.Abs(load[i] - load[from]) > (ByDegrees ? OpeningApart : PressureApart);
    }
}
