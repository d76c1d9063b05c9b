namespace Tickover.Workshop.Visits.Advising;

/// <summary>Where an advice is carried out; whoever shows it turns this into a link.</summary>
/// <param name="Kind">Sort of page.</param>
/// <param name="Stage">The stage, where the page belongs to one.</param>
/// <param name="Gate">The gate, for <see cref="AdvicePlaceKind.Gate"/>.</param>
/// <param name="Finding">The finding, for <see cref="AdvicePlaceKind.Finding"/>.</param>
public sealed record AdvicePlace(AdvicePlaceKind Kind, Stage? Stage = null, Gate? Gate = null, Id<Finding>? Finding = null)
{
    /// <summary>The visit's own page.</summary>
    public static AdvicePlace Visit { get; } = new(AdvicePlaceKind.Visit);

    /// <summary>The parts.</summary>
    public static AdvicePlace Parts { get; } = new(AdvicePlaceKind.Parts);

    /// <summary>The questions to the owner.</summary>
    public static AdvicePlace Approvals { get; } = new(AdvicePlaceKind.Approvals);

    /// <summary>The instruments.</summary>
    public static AdvicePlace Instruments { get; } = new(AdvicePlaceKind.Instruments);

    /// <summary>A stage.</summary>
    /// <param name="stage">Which.</param>
    /// <returns>The place.</returns>
    public static AdvicePlace Of(Stage stage) => new(AdvicePlaceKind.Stage, stage);
}
