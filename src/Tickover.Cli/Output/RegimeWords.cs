using Tickover.Workshop.Logs;

namespace Tickover.Cli.Output;

/// <summary>Regimes in the trade's words.</summary>
internal static class RegimeWords
{
    /// <summary>The words.</summary>
    /// <param name="regime">The regime.</param>
    /// <returns>Such as "full load".</returns>
    public static string Of(Regime regime) => RegimeNames.Of(regime);
}
