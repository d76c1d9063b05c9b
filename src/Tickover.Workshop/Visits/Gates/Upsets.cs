namespace Tickover.Workshop.Visits.Gates;

/// <summary>Finds in a visit's record what undoes earlier checks.</summary>
public static class Upsets
{
    /// <summary>Everything that undoes checks, in the order of keeping.</summary>
    /// <remarks>Only what the record tells: work that nobody entered undoes nothing here, though it does on the car.</remarks>
    /// <param name="record">The visit.</param>
    /// <returns>Events, earliest act first.</returns>
    public static IReadOnlyList<Upset> Of(VisitRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return [.. Parts(record).Concat(Notes(record)).Concat(Begun(record)).Concat(Leaks(record)).Where(u => u.Kind != Disturbance.None).OrderBy(u => u.Act)];
    }

    private static IEnumerable<Upset> Parts(VisitRecord record) => record.Parts
        .Where(p => p.State == PartState.Fitted && !p.Removed)
        .Select(p => new Upset(p.Changed, OfPart(p.Stage), $"“{p.What}” was entered as fitted"));

    private static IEnumerable<Upset> Notes(VisitRecord record) => record.Notes
        .Where(n => n.Kind == WorkKind.Done && !n.Removed)
        .Select(n => new Upset(n.Changed, OfWork(n.Stage), $"“{n.What}” was entered as done"));

    private static IEnumerable<Upset> Begun(VisitRecord record) => record.Stages
        .Where(s => s.State == StageState.Begun && !s.Removed)
        .Select(s => new Upset(s.Changed, OfStage(s.Stage), $"{s.Stage.Words()} was begun"));

    private static IEnumerable<Upset> Leaks(VisitRecord record) => FuelLeaks.Standing(record)
        .Select(f => new Upset(f.Kept, Disturbance.FuelOrLinkage, $"a fuel leak was found: “{f.What}”"));

    private static Disturbance OfStage(Stage stage) => stage switch
    {
        Stage.StripDown or Stage.Build => Disturbance.FuelOrLinkage | Disturbance.Carburettors,
        Stage.Storage or Stage.Gauge or Stage.Supply => Disturbance.FuelOrLinkage,
        _ => Disturbance.None,
    };

    private static Disturbance OfWork(Stage stage) => stage is Stage.Balance or Stage.Mixture ? Disturbance.Settings : OfStage(stage);

    // A part of Mixture is a jet, which opens a float chamber; one of Arrival or Balance is a plug, a lead or a set of points.
    private static Disturbance OfPart(Stage stage) => stage switch
    {
        Stage.Arrival => Disturbance.Engine,
        Stage.Balance => Disturbance.Engine | Disturbance.Settings,
        Stage.Mixture => Disturbance.FuelOrLinkage | Disturbance.Settings,
        _ => OfStage(stage),
    };
}
