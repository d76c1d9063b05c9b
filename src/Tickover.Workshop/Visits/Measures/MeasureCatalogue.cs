using Tickover.Workshop.Visits.Measures.Catalogue;

namespace Tickover.Workshop.Visits.Measures;

/// <summary>The one list of everything that is measured on a visit.</summary>
/// <remarks>Entry pages, accounts, the set-up card and docs/measures.md all come from it. The lines stand by stage in the folder Catalogue.</remarks>
public static class MeasureCatalogue
{
    /// <summary>All measures, each once, in the order of the work.</summary>
    public static IReadOnlyList<MeasureDefinition> All { get; } =
    [
        .. ArrivalMeasures.Rows, .. EngineMeasures.Rows, .. TankMeasures.Rows, .. GaugeMeasures.Rows, .. SupplyMeasures.Rows, .. StripDownMeasures.Rows,
        .. JetMeasures.Rows, .. WearMeasures.Rows, .. BuildMeasures.Rows, .. BalanceMeasures.Rows, .. MixtureMeasures.Rows, .. RoadMeasures.Rows,
    ];

    private static Dictionary<string, MeasureDefinition> ByKey { get; } = All.ToDictionary(m => m.Key, StringComparer.Ordinal);

    private static Dictionary<Stage, IReadOnlyList<MeasureGroup>> ByStage { get; } = Enum.GetValues<Stage>().ToDictionary(s => s, Groups);

    /// <summary>The measure of a key.</summary>
    /// <param name="key">A key such as "idleAirflow".</param>
    /// <returns>The measure, or null where there is none.</returns>
    public static MeasureDefinition? Find(string? key) => key is null ? null : ByKey.GetValueOrDefault(key);

    /// <summary>The measures of a stage under their headings, in the order of the work.</summary>
    /// <param name="stage">The stage.</param>
    /// <returns>The groups; a measure taken in several parts stands in each.</returns>
    public static IReadOnlyList<MeasureGroup> Of(Stage stage) => ByStage.GetValueOrDefault(stage, []);

    private static IReadOnlyList<MeasureGroup> Groups(Stage stage) =>
    [
        .. from step in Enum.GetValues<SubStep>()
           where step.StageOf() == stage
           select new MeasureGroup(step, [.. All.Where(m => m.Steps.Contains(step))]),
    ];
}
