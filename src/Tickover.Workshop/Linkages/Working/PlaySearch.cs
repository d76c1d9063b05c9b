using Tickover.Workshop.Linkages.Parts;

namespace Tickover.Workshop.Linkages.Working;

/// <summary>What the play of each rod does to each carburettor with the pedal up.</summary>
internal static class PlaySearch
{
    public static IReadOnlyList<PlayLine> Of(LinkageMotion motion)
    {
        var pose = motion.Pose(motion.RestDegrees);
        return
        [
            .. motion.Linkage.Links.Select((l, m) => (Rod: l as RodPart, m)).Where(x => x.Rod is not null).Select(x =>
            {
                var moved = pose.Sensitivity(motion.Train, x.m);
                return new PlayLine(
                    x.Rod!.Name,
                    x.Rod.PlayMillimetres,
                    [.. motion.Linkage.Carburettors.Select(c => Math.Abs(double.RadiansToDegrees(moved[c])) * x.Rod.PlayMillimetres / 1000)]);
            }),
        ];
    }
}
