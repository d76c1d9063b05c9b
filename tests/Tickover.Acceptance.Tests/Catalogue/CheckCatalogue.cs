namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Every check against the outside, in the order of the page. Add a catalogue class and name it here.</summary>
public static class CheckCatalogue
{
    public static IReadOnlyList<CheckGroup> Groups { get; } =
    [
        AirChecks.Group,
        FuelChecks.Group,
        GasFlowChecks.Group,
        JetChecks.Group,
        FlowBenchChecks.Group,
        InspectionChecks.Group,
        ThrottleChecks.Group,
        LinkageChecks.Group,
        SupplyChecks.Group,
        TankChecks.Group,
        SenderChecks.Group,
        SendingChecks.Group,
        BalancingChecks.Group,
        PracticeChecks.Group,
        InferenceChecks.Group,
        ChokeChecks.Group,
        SizingChecks.Group,
        SuctionChecks.Group,
        LipChecks.Group,
        AltitudeChecks.Group,
        CorrectionChecks.Group,
        CompositionChecks.Group,
        ExhaustChecks.Group,
        WallFilmChecks.Group,
        CorrosionChecks.Group,
        LeakChecks.Group,
        UnitChecks.Group,
    ];

    public static IEnumerable<OutsideCheck> All => Groups.SelectMany(group => group.Checks);
}
