using Tickover.Workshop.Linkages.Parts;
using Tickover.Workshop.Linkages.Working;

namespace Tickover.Workshop.Linkages;

/// <summary>Works out what a linkage does, what is amiss with it and what would put it right.</summary>
public static class LinkageAnalyst
{
    private const int CourseSteps = 40;
    private const int StanceSteps = 4;
    private const double Quarter = 0.25;

    /// <summary>Works it all out.</summary>
    /// <param name="linkage">The linkage.</param>
    /// <param name="limits">Limits on the air; null for common practice.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The analysis.</returns>
    public static LinkageAnalysis Of(Linkage linkage, LinkageLimits? limits = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(linkage);
        var within = limits ?? new LinkageLimits();
        var motion = new LinkageMotion(linkage);
        var course = Course(motion, within);
        var (reference, why) = ReferenceChoice.Of(motion, course[0]);
        var analysis = new LinkageAnalysis
        {
            Linkage = linkage,
            Limits = within,
            Course = course,
            Stances = [.. Enumerable.Range(0, StanceSteps + 1).Select(i => LinkageStance.Of(motion, motion.PedalAt((double)i / StanceSteps)))],
            Worst = LinkageWorst.Of(course, within),
            HeldOffDegrees = HeldOff(motion),
            RestDegrees = motion.RestDegrees,
            EndDegrees = motion.EndDegrees,
            End = motion.End,
            EndsAt = EndsAt(motion),
            Reach = Reach(motion),
            OverCentres = CentreSearch.Of(motion),
            NearestCentre = CentreSearch.Nearest(motion),
            Reference = reference,
            ReferenceWhy = why,
            Equalised = IsAlike(LinkageWorst.Of(course, within), within)
                ? new Equalised([], linkage, course, LinkageWorst.Of(course, within))
                : Equalise(motion, reference, within, cancellation),
            Play = PlaySearch.Of(motion),
            Warm = linkage.Warmth is { } warmth ? Warm(motion, new LinkageMotion(LinkageTrains.Warm(linkage, warmth)), within) : null,
        };
        return analysis with { Advice = AdviceWriter.Of(analysis) };
    }

    /// <summary>The linkage at one position of the pedal.</summary>
    /// <param name="linkage">The linkage.</param>
    /// <param name="down">How far the pedal is down, 0 to 1.</param>
    /// <param name="limits">Limits on the air; null for common practice.</param>
    /// <returns>The moment, and where its parts stand.</returns>
    public static (LinkageMoment Moment, LinkageStance Stance) At(Linkage linkage, double down, LinkageLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(linkage);
        var motion = new LinkageMotion(linkage);
        return (new MomentReader(motion, limits ?? new LinkageLimits()).At(down), LinkageStance.Of(motion, motion.PedalAt(down)));
    }

    private static LinkageMoment[] Course(LinkageMotion motion, LinkageLimits limits)
    {
        var reader = new MomentReader(motion, limits);
        return [.. Enumerable.Range(0, CourseSteps + 1).Select(i => reader.At((double)i / CourseSteps))];
    }

    private static double[] HeldOff(LinkageMotion motion) =>
        [.. motion.Angles(motion.RestDegrees).Zip(Throttles(motion), (a, t) => Math.Max(0, a - t.IdleDegrees))];

    private static ReachLine[] Reach(LinkageMotion motion) =>
        [.. motion.Angles(motion.EndDegrees).Zip(Throttles(motion), (a, t) => new ReachLine(a, Math.Max(0, t.FullDegrees - a)))];

    private static IEnumerable<ThrottlePart> Throttles(LinkageMotion motion) => motion.Linkage.Carburettors.Select(c => motion.Linkage.Shafts[c].Throttle!);

    private static string? EndsAt(LinkageMotion motion) => motion.End switch
    {
        TravelEnd.FullStop => motion.Linkage.Shafts[motion.Linkage.Carburettors[motion.EndsAt!.Value]].Name,
        TravelEnd.DeadPoint => motion.Linkage.Links[motion.EndsAt!.Value].Name,
        _ => null,
    };

    private static Equalised Equalise(LinkageMotion motion, int reference, LinkageLimits limits, CancellationToken cancellation) => Set(
        motion.Linkage,
        new Equaliser(motion, reference, limits).Moves(LinkageAdjuster.Of(motion.Linkage), moves => IsAlike(Set(motion.Linkage, moves, limits).Worst, limits), cancellation),
        limits);

    private static bool IsAlike(LinkageWorst worst, LinkageLimits limits) => worst.OffIdle <= limits.OffIdlePart && worst.Idle <= limits.IdlePart;

    private static Equalised Set(Linkage linkage, IReadOnlyList<LinkageMove> moves, LinkageLimits limits)
    {
        var set = moves.Aggregate(linkage, (l, m) => m.Adjuster.Set(l, m.More));
        var course = Course(new LinkageMotion(set), limits);
        return new Equalised(moves, set, course, LinkageWorst.Of(course, limits));
    }

    private static WarmLine[] Warm(LinkageMotion cold, LinkageMotion warm, LinkageLimits limits)
    {
        var (before, after) = (new MomentReader(cold, limits), new MomentReader(warm, limits));
        var (coldIdle, warmIdle) = (before.At(0).Plates, after.At(0).Plates);
        var (coldQuarter, warmQuarter) = (before.At(Quarter).Plates, after.At(Quarter).Plates);
        return
        [
            .. Enumerable.Range(0, coldIdle.Count).Select(i => new WarmLine(
                warmIdle[i].Degrees - coldIdle[i].Degrees,
                warmQuarter[i].Degrees - coldQuarter[i].Degrees,
                warmIdle[i].DeviationPart - coldIdle[i].DeviationPart)),
        ];
    }
}
