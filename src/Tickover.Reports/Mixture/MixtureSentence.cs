using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>A map in one sentence: where it is furthest from the target.</summary>
internal static class MixtureSentence
{
    // Speeds are told to this, rpm: nobody holds an engine closer by ear
    private const double SpeedRounding = 100;

    // Openings up to these are called light and half throttle, degrees (common practice)
    private const double LightUpTo = 20;
    private const double HalfUpTo = 50;

    internal static string For(MixtureMap map, BarrelMap barrel, string? subject)
    {
        var name = subject ?? Barrels(barrel);
        if (!barrel.AllPoints().Any(NoAnswer.HasAnswer))
        {
            return $"{name}. No answer anywhere: the engine does not run here.";
        }

        return WorstRegion.Find(map.Grid, barrel) is { } worst
            ? $"{name}. {(worst.IsLean ? "Too lean" : "Too rich")}, {Speeds(worst)}, {Throttle(worst)}."
            : $"{name}. Within the target wherever the engine runs.";
    }

    internal static string Barrels(BarrelMap barrel)
    {
        var numbers = barrel.AlikeBarrels.Order().ToArray();
        if (numbers.Length < 2)
        {
            return $"Barrel {barrel.BarrelNumber}";
        }

        var together = numbers[^1] - numbers[0] == numbers.Length - 1;
        return together && numbers.Length > 2
            ? $"Barrels {numbers[0]} to {numbers[^1]}"
            : $"Barrels {string.Join(", ", numbers[..^1])} and {numbers[^1]}";
    }

    private static string Speeds(WorstRegion region)
    {
        var low = Math.Round(region.SlowestRpm / SpeedRounding) * SpeedRounding;
        var high = Math.Round(region.FastestRpm / SpeedRounding) * SpeedRounding;
        return Shown.WithUnit(Shown.Range(Shown.Speed(low), Shown.Speed(high)), "rpm");
    }

    private static string Throttle(WorstRegion region)
    {
        var (from, to) = (Word(region.SmallestOpening), Word(region.LargestOpening));
        return (from, to) switch
        {
            ("light", "wide open") => "in places at all openings",
            ("wide open", _) => "wide open",
            (_, "wide open") => $"{from} to wide open throttle",
            _ when string.Equals(from, to, StringComparison.Ordinal) => $"{from} throttle",
            _ => $"{from} to {to} throttle",
        };
    }

    private static string Word(double opening) =>
        opening <= LightUpTo ? "light" : opening <= HalfUpTo ? "half" : "wide open";
}
