namespace Tickover.Physics.Inference;

/// <summary>All sets of up to a few causes, each with the probability it has before anything is observed. docs/physics/inference.md (1).</summary>
internal static class CauseSets
{
    /// <summary>Every set, the empty one first, then by size; members rise within a set.</summary>
    public static List<int[]> UpTo(int causes, int most)
    {
        var sets = new List<int[]> { Array.Empty<int>() };
        var first = 0;
        for (var size = 1; size <= Math.Min(causes, most); size++)
        {
            var end = sets.Count;
            for (var i = first; i < end; i++)
            {
                for (var next = sets[i].Length == 0 ? 0 : sets[i][^1] + 1; next < causes; next++)
                {
                    sets.Add([.. sets[i], next]);
                }
            }

            first = end;
        }

        return sets;
    }

    public static double Prior(int[] set, IReadOnlyList<double> priors)
    {
        var chance = 1.0;
        for (var cause = 0; cause < priors.Count; cause++)
        {
            chance *= Array.BinarySearch(set, cause) >= 0 ? priors[cause] : 1 - priors[cause]; // inference (1)
        }

        return chance;
    }
}
