using Tickover.Workshop.Exhaust;

namespace Tickover.Cli.Output;

/// <summary>What is wrong with a gas reading, in a few words.</summary>
internal static class GasWords
{
    /// <summary>The caution that stands beside every gas reading.</summary>
    public const string Caution =
        "Engine running: extraction on the tail pipe first. Carbon monoxide cannot be smelled and can kill within minutes; local rules come first.";

    /// <summary>What a reading is worth.</summary>
    /// <param name="standing">The standing.</param>
    /// <returns>A word.</returns>
    public static string Of(GasStanding standing) => standing switch
    {
        GasStanding.Good => "good",
        GasStanding.Doubtful => "doubtful",
        _ => "spoilt",
    };

    /// <summary>A fault in short.</summary>
    /// <param name="kind">The fault.</param>
    /// <returns>A few words.</returns>
    public static string Of(GasFaultKind kind) => kind switch
    {
        GasFaultKind.DioxideInTenths => "CO₂ in tenths",
        GasFaultKind.NotZeroed => "not zeroed",
        GasFaultKind.ImpossibleSum => "gases do not add up",
        GasFaultKind.Misfire => "misfire",
        GasFaultKind.DilutedSample => "diluted sample or exhaust leak",
        GasFaultKind.LeanOrLeak => "lean or leak",
        GasFaultKind.HighHydrocarbons => "HC high",
        GasFaultKind.LambdaDisagrees => "λ shown is another",
        _ => "beyond the formula",
    };
}
