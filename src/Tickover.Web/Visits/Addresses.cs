using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Advising;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Web.Visits;

/// <summary>The addresses of a visit's pages, in one place.</summary>
internal static class Addresses
{
    public static string Of(Id<Visit> visit) => $"/visits/{visit}";

    public static string Of(Id<Visit> visit, Stage stage) => $"/visits/{visit}/{Word(stage)}";

    public static string Of(Id<Visit> visit, Gate gate) => $"/visits/{visit}/gates/{Word(gate)}";

    public static string Of(Id<Visit> visit, Id<Finding> finding) => $"/visits/{visit}/findings/{finding}";

    public static string Caution(Id<Visit> visit, string key) => $"/visits/{visit}/cautions/{key}";

    public static string Measure(Id<Visit> visit, Stage stage, string measure) => $"/visits/{visit}/{Word(stage)}?measure={measure}#entry";

    /// <summary>The whole set of carburettors, as found or as left.</summary>
    public static string Set(Id<Visit> visit, Stage stage) => $"{Of(visit, stage)}/set";

    /// <summary>The card of one carburettor.</summary>
    public static string Card(Id<Visit> visit, Stage stage, Place carburettor) => $"{Of(visit, stage)}/cards/{Uri.EscapeDataString(carburettor.Name)}";

    public static string Word(Stage stage) => stage.Words().ToLowerInvariant();

    public static Stage? ReadStage(string word) =>
        Enum.GetValues<Stage>().Cast<Stage?>().FirstOrDefault(s => string.Equals(Word(s!.Value), word, StringComparison.Ordinal));

    public static string Word(Gate gate) => gate switch
    {
        Gate.BayReady => "bay-ready",
        Gate.EngineMayRun => "engine-may-run",
        Gate.FitToTune => "fit-to-tune",
        _ => "fit-for-road",
    };

    public static Gate? ReadGate(string word) =>
        Enum.GetValues<Gate>().Cast<Gate?>().FirstOrDefault(g => string.Equals(Word(g!.Value), word, StringComparison.Ordinal));

    /// <summary>Where a piece of advice is followed.</summary>
    public static string Of(VisitRecord record, Advice advice) => advice.Place switch
    {
        { Kind: AdvicePlaceKind.Stage, Stage: { } stage } => Of(record.Visit.Id, stage),
        { Kind: AdvicePlaceKind.Gate, Gate: { } gate } => Of(record.Visit.Id, gate),
        { Kind: AdvicePlaceKind.Finding, Finding: { } finding } => Of(record.Visit.Id, finding),
        { Kind: AdvicePlaceKind.Parts } => $"{Of(record.Visit.Id)}/papers#parts",
        { Kind: AdvicePlaceKind.Approvals } => $"{Of(record.Visit.Id)}/papers#approvals",
        { Kind: AdvicePlaceKind.RoadLogs } => $"{Of(record.Visit.Id)}/road-logs",
        { Kind: AdvicePlaceKind.Mixture } => $"/cars/{record.Car.Slug}/mixture",
        { Kind: AdvicePlaceKind.Instruments } => "/workshop/instruments",
        _ => $"{Of(record.Visit.Id)}/brief",
    };
}
