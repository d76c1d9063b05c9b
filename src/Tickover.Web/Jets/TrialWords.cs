using Tickover.Reports;
using Tickover.Web.Mixture;

namespace Tickover.Web.Jets;

/// <summary>Says what a trial changes and what it does at the point looked at.</summary>
internal static class TrialWords
{
    private const string Arrow = "→";

    /// <summary>The change in a few words, such as "idle jet 50 → 55".</summary>
    public static string Short(Bench bench) => string.Join(", ", bench.Query.Changes.Select(c => Change(bench, c)));

    /// <summary>One change, such as "idle jet 50 → 55".</summary>
    public static string Change(Bench bench, TrialChange change)
    {
        var key = $"barrel.{change.Part}";
        var before = bench.Barrel.Figures.FirstOrDefault(f => string.Equals(f.Definition.Key, key, StringComparison.Ordinal));
        if (before is null)
        {
            return change.Part;
        }

        var after = bench.Trial?.Barrels.First(b => b.Number == bench.Barrel.Number).Figures[key];
        return $"{before.Definition.Label} {SizeText.Show(before)} {Arrow} {(after is null ? change.Value : SizeText.Show(after))}";
    }

    /// <summary>λ at the point before and after, with what the second is good to.</summary>
    public static string Here(Bench bench) => bench.TrialPoint is { } trial
        ? $"Here λ {PointFigures.Lambda(bench.FittedPoint)} {Arrow} {PointFigures.Lambda(trial)} ({PointFigures.Limits(trial)})."
        : "";

    /// <summary>Which barrels, as the start of a sentence.</summary>
    public static string Barrels(IReadOnlyList<int> numbers, int all) => numbers.Count switch
    {
        1 when all == 1 => "",
        1 => $"Barrel {numbers[0]}.",
        _ when numbers.Count == all => $"Barrels 1 to {all} alike.",
        _ => $"Barrels {string.Join(", ", numbers)} alike.",
    };

    /// <summary>The sizes either side say in words what one of their steps is.</summary>
    public static string Area(double fromMetres, double toMetres)
    {
        var part = toMetres / fromMetres * (toMetres / fromMetres) - 1;
        return part >= 0 ? $"{Shown.Percent(part)} more area" : $"{Shown.Percent(-part)} less area";
    }
}
