namespace Tickover.Workshop.Linkages.Working;

/// <summary>Which carburettor to match the others to.</summary>
internal static class ReferenceChoice
{
    public static (int Carburettor, string Why) Of(LinkageMotion motion, LinkageMoment idle)
    {
        var (linkage, numbers) = (motion.Linkage, motion.Linkage.Carburettors);
        var steps = numbers.Select(linkage.StepsTo).ToArray();
        var least = steps.Min();
        var nearest = Enumerable.Range(0, numbers.Count).Where(i => steps[i] == least).ToArray();

        // Of several as near: the one whose plates the pedal turns with the least wandering, then the first.
        var chosen = nearest.MinBy(i => Math.Round(idle.Plates[i].PlayDegrees, 3));
        var name = linkage.Shafts[numbers[chosen]].Name;
        var members = least == 1 ? "one joint lies" : $"{LinkageWords.Count(least)} joints lie";
        return (chosen, nearest.Length == 1
            ? $"{name}: {members} between it and the pedal, fewer than for any other."
            : $"{name}: {members} between it and the pedal, as for {LinkageWords.List([.. nearest.Where(i => i != chosen).Select(i => linkage.Shafts[numbers[i]].Name)])}; it wanders least with play.");
    }
}
