using Tickover.Workshop.Mixture;

namespace Tickover.Cli.Output;

/// <summary>Why a point is to be taken with care, in words.</summary>
internal static class ValidityWords
{
    /// <summary>The words.</summary>
    /// <param name="validity">The flags.</param>
    /// <returns>A list of phrases; empty where nothing is to be said.</returns>
    public static string Of(PointValidity validity) => string.Join(
        "; ",
        Enum.GetValues<PointValidity>().Where(v => v != PointValidity.Inside && validity.HasFlag(v)).Select(One));

    private static string One(PointValidity flag) => flag switch
    {
        PointValidity.Overrun => "the engine gives no work here, the car drives it",
        PointValidity.TooLeanToRun => "too lean to burn steadily",
        PointValidity.TooRichToRun => "too rich to burn steadily",
        PointValidity.ChokeNearSonic => "the air in the choke nears the speed of sound",
        PointValidity.JetOutsideRange => "a jet runs outside the range of its coefficient",
        PointValidity.NotSettled => "the computation did not settle",
        PointValidity.BeyondRatedSpeed => "beyond the speed the engine is meant for",
        PointValidity.NoFuel => "no fuel flows",
        PointValidity.NoAir => "no air passes",
        _ => flag.ToString(),
    };
}
