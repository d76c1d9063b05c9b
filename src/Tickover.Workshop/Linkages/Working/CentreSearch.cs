using Tickover.Physics.Linkages;
using Tickover.Workshop.Linkages.Parts;

namespace Tickover.Workshop.Linkages.Working;

/// <summary>Finds where rods come into line with their levers, over the whole travel of the pedal, wherever the plates' stops end it.</summary>
internal static class CentreSearch
{
    private const int Steps = 100;

    public static IReadOnlyList<OverCentre> Of(LinkageMotion motion)
    {
        var found = new List<OverCentre>();
        for (var m = 0; m < motion.Linkage.Links.Count; m++)
        {
            if (motion.Linkage.Links[m] is RodPart rod)
            {
                found.AddRange(Ends(motion, m, rod));
            }
        }

        return found;
    }

    /// <summary>Where a rod comes nearest to its lever's line, however far that is; null where no rod moves.</summary>
    public static OverCentre? Nearest(LinkageMotion motion)
    {
        var lines =
            from m in Enumerable.Range(0, motion.Linkage.Links.Count)
            let rod = motion.Linkage.Links[m] as RodPart
            where rod is not null
            from pose in Poses(motion, m)
            from end in new[] { (Shaft: rod.From, Lever: rod.FromLever, Sine: pose.Member.DriverSine), (Shaft: rod.To, Lever: rod.ToLever, Sine: pose.Member.DrivenSine) }
            select new OverCentre(rod.Name, Lever(motion.Linkage.Shafts[end.Shaft], end.Lever), OverCentreKind.Near, pose.Down, Degrees(end.Sine));
        return lines.MinBy(l => l.DegreesOff);
    }

    private static (double Down, MemberPose Member)[] Poses(LinkageMotion motion, int member) =>
    [
        .. Enumerable.Range(0, Steps + 1)
            .Select(i => (Down: (double)i / Steps, Member: motion.Pose(motion.PedalAt((double)i / Steps)).Members[member]))
            .Where(p => !double.IsNaN(p.Member.Rate)),
    ];

    private static IEnumerable<OverCentre> Ends(LinkageMotion motion, int member, RodPart rod)
    {
        var (from, to) = (motion.Linkage.Shafts[rod.From], motion.Linkage.Shafts[rod.To]);
        var poses = Poses(motion, member);
        if (Worst([.. poses.Select(p => (p.Down, p.Member.DriverSine))]) is var (down, degrees, crossed))
        {
            yield return new OverCentre(rod.Name, Lever(from, rod.FromLever), crossed ? OverCentreKind.Over : OverCentreKind.Near, down, degrees);
        }

        if (motion.End is TravelEnd.DeadPoint && motion.EndsAt == member)
        {
            yield return new OverCentre(rod.Name, Lever(to, rod.ToLever), OverCentreKind.Dead, motion.EndDegrees / motion.Linkage.PedalTravelDegrees, 0);
        }
        else if (Worst([.. poses.Select(p => (p.Down, p.Member.DrivenSine))]) is var (there, off, _))
        {
            yield return new OverCentre(rod.Name, Lever(to, rod.ToLever), OverCentreKind.Near, there, off);
        }
    }

    private static string Lever(ShaftPart shaft, int lever) => $"{shaft.Name}/{shaft.Levers[lever].Name}";

    private static double Degrees(double sine) => double.RadiansToDegrees(Math.Asin(Math.Min(1, Math.Abs(sine))));

    // Where the lever stands nearest to the rod's line, if that is near at all; and whether it passes the line.
    private static (double Down, double Degrees, bool Crossed)? Worst((double Down, double Sine)[] sines)
    {
        if (sines.Length == 0)
        {
            return null;
        }

        var crossing = Array.FindIndex(sines, s => Math.Sign(s.Sine) != Math.Sign(sines[0].Sine));
        if (crossing >= 0)
        {
            return (sines[crossing].Down, 0, true);
        }

        var nearest = sines.MinBy(s => Math.Abs(s.Sine));
        var degrees = Degrees(nearest.Sine);
        return degrees < OverCentre.NearDegrees ? (nearest.Down, degrees, false) : null;
    }
}
