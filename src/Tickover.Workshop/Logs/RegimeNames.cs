namespace Tickover.Workshop.Logs;

/// <summary>Regimes in the trade's words.</summary>
public static class RegimeNames
{
    /// <summary>The words.</summary>
    /// <param name="regime">The regime.</param>
    /// <returns>Such as "full load".</returns>
    public static string Of(Regime regime) => regime switch
    {
        Regime.Idle => "idle",
        Regime.Progression => "progression",
        Regime.Changeover => "changeover",
        Regime.Cruise => "cruise",
        Regime.FullLoad => "full load",
        Regime.TipIn => "tip-in",
        _ => "overrun",
    };
}
