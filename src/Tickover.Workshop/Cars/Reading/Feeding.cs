using Tickover.Workshop.Cars.Catalogue;

namespace Tickover.Workshop.Cars.Reading;

/// <summary>Settles which barrel feeds which cylinders, and says where the document contradicts itself.</summary>
internal static class Feeding
{
    /// <summary>Fills in what each barrel feeds and how many share its air.</summary>
    /// <param name="barrels">The barrels.</param>
    /// <param name="cylinders">Number of cylinders, above 0.</param>
    /// <param name="isShared">Whether the manifold is shared.</param>
    /// <param name="faults">Where faults go.</param>
    /// <returns>The barrels with their cylinders; as they came where there is a fault.</returns>
    public static IReadOnlyList<BarrelSource> Settle(IReadOnlyList<BarrelSource> barrels, int cylinders, bool isShared, Faults faults)
    {
        var settled = barrels.Any(b => b.SaysFeeds) ? barrels : WithDefaultFeeds(barrels, cylinders, isShared);
        var silent = settled.Where(b => b.Feeds is null).ToArray();
        foreach (var barrel in silent.Where(b => !b.SaysFeeds))
        {
            faults.Missing($"{barrel.Path}.feeds", "What this barrel feeds", $"numbers of cylinders from 1 to {cylinders}", "\"feeds\": [1], or take \"feeds\" out of every barrel to have them in order");
        }

        if (silent.Length > 0)
        {
            return settled;
        }

        foreach (var empty in settled.Where(b => b.Feeds!.Count == 0))
        {
            faults.Add($"{empty.Path}.feeds", "This barrel feeds nothing", "at least one cylinder", "Write the number of the cylinder it feeds.");
        }

        if (isShared)
        {
            CheckShared(settled, faults);
        }
        else
        {
            CheckSeparate(settled, faults);
        }

        CheckAllFed(settled, cylinders, faults);
        return [.. settled.Select(b => b with { Place = PlaceOf(b, settled, isShared) })];
    }

    private static IReadOnlyList<BarrelSource> WithDefaultFeeds(IReadOnlyList<BarrelSource> barrels, int cylinders, bool isShared)
    {
        if (isShared)
        {
            return [.. barrels.Select(b => b with { Feeds = [.. Enumerable.Range(1, cylinders)] })];
        }

        return barrels.Count == cylinders ? [.. barrels.Select((b, i) => b with { Feeds = [i + 1] })] : barrels;
    }

    private static BarrelPlace PlaceOf(BarrelSource barrel, IReadOnlyList<BarrelSource> all, bool isShared) =>
        isShared
            ? new BarrelPlace(Shared: true, all.Count(b => b.Feeds!.Intersect(barrel.Feeds!).Any()), Math.Max(1, barrel.Feeds!.Count))
            : BarrelPlace.OneEach;

    private static void CheckSeparate(IReadOnlyList<BarrelSource> barrels, Faults faults)
    {
        foreach (var barrel in barrels.Where(b => b.Feeds!.Count > 1))
        {
            faults.Add($"{barrel.Path}.feeds", $"This barrel feeds {barrel.Feeds!.Count} cylinders, and the manifold is separate", "one cylinder for each barrel", "Write \"manifold\": \"shared\" where barrels share a manifold.");
        }

        for (var i = 0; i < barrels.Count; i++)
        {
            foreach (var twice in barrels[i].Feeds!.Where(c => barrels.Take(i).Any(b => b.Feeds!.Contains(c))))
            {
                faults.Add($"{barrels[i].Path}.feeds", $"Cylinder {twice} is fed twice", "each cylinder by one barrel", "Correct the number, or write \"manifold\": \"shared\".");
            }
        }
    }

    private static void CheckShared(IReadOnlyList<BarrelSource> barrels, Faults faults)
    {
        foreach (var barrel in barrels)
        {
            var unlike = barrels.FirstOrDefault(b => b.Feeds!.Intersect(barrel.Feeds!).Any() && !b.Feeds!.ToHashSet().SetEquals(barrel.Feeds!));
            if (unlike is not null)
            {
                faults.Add($"{barrel.Path}.feeds", "Barrels that share a cylinder feed different cylinders", "the same cylinders for all barrels of a shared volume", $"Make it the same as {unlike.Path}.feeds.");
            }
        }
    }

    private static void CheckAllFed(IReadOnlyList<BarrelSource> barrels, int cylinders, Faults faults)
    {
        var unfed = Enumerable.Range(1, cylinders).Except(barrels.SelectMany(b => b.Feeds!)).ToArray();
        if (unfed.Length > 0)
        {
            faults.Add("carburettors", $"No barrel feeds cylinder {string.Join(", ", unfed)}", "every cylinder fed", "Add the cylinder to a barrel's \"feeds\", or the barrel that is missing.");
        }
    }
}
