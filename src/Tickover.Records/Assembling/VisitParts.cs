using Tickover.Workshop.Visits;

namespace Tickover.Records.Assembling;

/// <summary>The parts of several visits, read at once.</summary>
internal sealed record VisitParts(
    ILookup<Id<Visit>, StageMark> Stages,
    ILookup<Id<Visit>, Reading> Readings,
    ILookup<Id<Visit>, Finding> Findings,
    ILookup<Id<Visit>, Photograph> Photographs,
    ILookup<Id<Visit>, PartLine> Parts,
    ILookup<Id<Visit>, TimeLine> Times,
    ILookup<Id<Visit>, Approval> Approvals,
    ILookup<Id<Visit>, WorkNote> Notes,
    ILookup<Id<Visit>, SignOff> SignOffs,
    ILookup<Id<Visit>, CautionSeen> Cautions,
    ILookup<Id<Visit>, Signature> Signatures,
    ILookup<Id<Visit>, RoadRun> Runs,
    ILookup<Id<Visit>, JetFitting> Fittings,
    ILookup<Id<Visit>, ScrewTurn> ScrewTurns)
{
    /// <summary>A visit with its parts.</summary>
    public VisitRecord Of(Id<Visit> visit, VisitRecord record) => record with
    {
        Stages = Standing(Stages[visit]),
        Readings = [.. Readings[visit]],
        Findings = Standing(Findings[visit]),
        Photographs = Standing(Photographs[visit]),
        Parts = Standing(Parts[visit]),
        Times = Standing(Times[visit]),
        Approvals = Standing(Approvals[visit]),
        Notes = Standing(Notes[visit]),
        SignOffs = Standing(SignOffs[visit]),
        Cautions = Standing(Cautions[visit]),
        Signatures = Standing(Signatures[visit]),
        Runs = Standing(Runs[visit]),
        Fittings = Standing(Fittings[visit]),
        ScrewTurns = Standing(ScrewTurns[visit]),
    };

    private static IReadOnlyList<T> Standing<T>(IEnumerable<T> items)
        where T : RecordItem => [.. items.Where(i => !i.Removed)];
}
