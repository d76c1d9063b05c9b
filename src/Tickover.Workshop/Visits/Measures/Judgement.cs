namespace Tickover.Workshop.Visits.Measures;

/// <summary>Judges values by limits and says the verdict.</summary>
public static class Judgement
{
    /// <summary>Part of a limit by which the rounding of a conversion may move a value that lies on it.</summary>
    private const double Rounding = 1e-9;

    /// <summary>The verdict as it is said.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <returns>"low", "high", "within" or "cannot be told"; empty where nothing was judged.</returns>
    public static string Words(this Verdict verdict) => verdict switch
    {
        Verdict.Within => "within",
        Verdict.Low => "low",
        Verdict.High => "high",
        Verdict.CannotBeTold => "cannot be told",
        _ => "",
    };

    /// <summary>Judges a value with its band.</summary>
    /// <param name="value">The value.</param>
    /// <param name="band">Half the width of the band it is good to; null where that is not known, and counted as none.</param>
    /// <param name="lowest">The least accepted; null where there is none.</param>
    /// <param name="highest">The largest accepted; null where there is none.</param>
    /// <returns>The verdict.</returns>
    public static Verdict Judge(double value, double? band, double? lowest, double? highest)
    {
        if (!double.IsFinite(value) || (lowest is null && highest is null))
        {
            return Verdict.NotJudged;
        }

        var half = band ?? 0;
        var slack = Rounding * Math.Max(Math.Abs(value), Math.Max(Math.Abs(lowest ?? 0), Math.Abs(highest ?? 0)));
        return (value + half < lowest - slack, value - half > highest + slack, value - half < lowest - slack || value + half > highest + slack) switch
        {
            (true, _, _) => Verdict.Low,
            (_, true, _) => Verdict.High,
            (_, _, true) => Verdict.CannotBeTold,
            _ => Verdict.Within,
        };
    }

    /// <summary>Two verdicts on one value: what is surely outside comes first, then what cannot be told.</summary>
    internal static Verdict And(this Verdict one, Verdict other) => one > other ? one : other;
}
