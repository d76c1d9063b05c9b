namespace Tickover.Workshop.Visits.Measures;

/// <summary>Where the parts of the stages belong and what they are called.</summary>
public static class SubSteps
{
    private static readonly Dictionary<SubStep, (Stage Stage, string Words)> Table = new()
    {
        [SubStep.Brief] = (Stage.Arrival, "Brief and intake"),
        [SubStep.BaySafe] = (Stage.Arrival, "Bay and car made ready"),
        [SubStep.Survey] = (Stage.Arrival, "Survey as found"),
        [SubStep.Baseline] = (Stage.Arrival, "Baseline"),
        [SubStep.EngineCondition] = (Stage.Arrival, "Is the engine fit to be tuned"),
        [SubStep.FuelSample] = (Stage.Storage, "Fuel sampled and drained"),
        [SubStep.TankWork] = (Stage.Storage, "Tanks"),
        [SubStep.LinkedTanks] = (Stage.Gauge, "Where the fuel is"),
        [SubStep.SenderAndNeedle] = (Stage.Gauge, "Sender and needle"),
        [SubStep.Strapping] = (Stage.Gauge, "Filled in steps"),
        [SubStep.HosesAndFilters] = (Stage.Supply, "Pipes, hoses, filters"),
        [SubStep.Pump] = (Stage.Supply, "Pump and pressure"),
        [SubStep.AsFoundSettings] = (Stage.StripDown, "Settings before stripping"),
        [SubStep.Cleaning] = (Stage.StripDown, "Cleaned"),
        [SubStep.JetsAndChokes] = (Stage.StripDown, "Jets and chokes"),
        [SubStep.Wear] = (Stage.StripDown, "Wear"),
        [SubStep.Specification] = (Stage.Build, "Starting specification"),
        [SubStep.Bench] = (Stage.Build, "Set on the bench"),
        [SubStep.Linkage] = (Stage.Build, "Linkage"),
        [SubStep.FitToTune] = (Stage.Balance, "Fit to be tuned"),
        [SubStep.FirstStart] = (Stage.Balance, "First fuel and start"),
        [SubStep.WarmThrough] = (Stage.Balance, "Warmed through, timing, air leaks"),
        [SubStep.BarrelBalance] = (Stage.Balance, "Barrels balanced"),
        [SubStep.Locked] = (Stage.Balance, "Locked"),
        [SubStep.IdleMixture] = (Stage.Mixture, "Idle mixture"),
        [SubStep.Jetting] = (Stage.Mixture, "Jets and chokes tried"),
        [SubStep.RoadTest] = (Stage.Road, "Road test"),
        [SubStep.HotSoak] = (Stage.Road, "Hot soak"),
        [SubStep.NextMorning] = (Stage.Road, "Next morning"),
        [SubStep.HandedBack] = (Stage.HandOver, "Handed back"),
        [SubStep.FollowUp] = (Stage.HandOver, "Follow-up"),
    };

    /// <summary>The stage a part belongs to.</summary>
    /// <param name="step">The part.</param>
    /// <returns>The stage.</returns>
    public static Stage StageOf(this SubStep step) => Table[step].Stage;

    /// <summary>The heading of a part.</summary>
    /// <param name="step">The part.</param>
    /// <returns>Words such as "Barrels balanced".</returns>
    public static string Heading(this SubStep step) => Table[step].Words;
}
