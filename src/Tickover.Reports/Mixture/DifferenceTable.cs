using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Mixture;

/// <summary>A difference of two maps in words and as a table.</summary>
internal static class DifferenceTable
{
    internal static string Sentence(DifferenceView view)
    {
        var changes = Changes(view).ToArray();
        if (changes.Length == 0)
        {
            return "Trial less fitted. No place where both give an answer.";
        }

        var (richest, leanest) = (changes.MinBy(c => c.Change), changes.MaxBy(c => c.Change));
        var parts = new List<string>();
        if (richest.Change <= -DifferenceField.NoChange)
        {
            parts.Add($"Richer by up to {Told(richest)}");
        }

        if (leanest.Change >= DifferenceField.NoChange)
        {
            parts.Add($"{(parts.Count > 0 ? "leaner" : "Leaner")} by up to {Told(leanest)}");
        }

        return parts.Count > 0 ? $"Trial less fitted. {string.Join("; ", parts)}." : "Trial less fitted. No change anywhere.";
    }

    internal static PictureTable For(DifferenceView view)
    {
        var grid = view.Fitted.Grid;
        var (fitted, trial) = (view.Fitted.ForBarrel(view.BarrelNumber).Points, view.Trial.ForBarrel(view.BarrelNumber).Points);
        var rows = Enumerable.Range(0, grid.ThrottleDegrees.Count).Reverse().Select(j => (IReadOnlyList<string>)
        [
            Shown.Opening(grid.ThrottleDegrees[j]),
            .. Enumerable.Range(0, grid.SpeedsRpm.Count).Select(i => Cell(fitted[i, j], trial[i, j])),
        ]);
        return new PictureTable(
            $"Barrel {view.BarrelNumber}: change of λ, trial less fitted, over engine speed in rpm, across, and throttle opening, down",
            ["Throttle", .. grid.SpeedsRpm.Select(Shown.Speed)], [.. rows]);
    }

    private static string Cell(BarrelPoint fitted, BarrelPoint trial) =>
        NoAnswer.Why(trial) is { } after ? after.ShortWords
        : NoAnswer.Why(fitted) is { } before ? $"{before.ShortWords} before"
        : Shown.LambdaDifference(trial.Lambda - fitted.Lambda);

    private static IEnumerable<(double Change, MapSpot Spot)> Changes(DifferenceView view)
    {
        var grid = view.Fitted.Grid;
        var (fitted, trial) = (view.Fitted.ForBarrel(view.BarrelNumber).Points, view.Trial.ForBarrel(view.BarrelNumber).Points);
        for (var i = 0; i < grid.SpeedsRpm.Count; i++)
        {
            for (var j = 0; j < grid.ThrottleDegrees.Count; j++)
            {
                if (NoAnswer.HasAnswer(fitted[i, j]) && NoAnswer.HasAnswer(trial[i, j]))
                {
                    yield return (trial[i, j].Lambda - fitted[i, j].Lambda, new MapSpot(grid.SpeedsRpm[i], grid.ThrottleDegrees[j]));
                }
            }
        }
    }

    private static string Told((double Change, MapSpot Spot) change) =>
        $"{Shown.Lambda(Math.Abs(change.Change))}, at {Shown.SpeedWithUnit(change.Spot.SpeedRpm)} and {Shown.Opening(change.Spot.ThrottleDegrees)}";
}
