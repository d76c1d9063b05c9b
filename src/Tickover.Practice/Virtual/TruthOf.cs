namespace Tickover.Practice.Virtual;

/// <summary>The truth of an engine as it stands: rods on, hot, plates at rest where they belong.</summary>
internal static class TruthOf
{
    public static PracticeTruth Engine(VirtualEngine engine, IReadOnlyList<HiddenFault> faults)
    {
        var apart = engine.Linkage.Apart;
        engine.Linkage.Apart = false;
        engine.Friction = 1;
        Array.Clear(engine.Unrest);
        var idle = engine.Idle();
        var raised = PracticeLimits.Speeds(engine.Plan).ToDictionary(s => s, s => Air(engine.Held(s)));
        engine.Linkage.Apart = apart;
        return new()
        {
            IdleRpm = idle?.Rpm ?? 0,
            IdleAir = Air(idle),
            RaisedAir = raised,
            IdleWithin = PracticeLimits.AtIdle(engine.Plan, Air(idle)),
            RaisedWithin = raised.Values.All(a => PracticeLimits.OffIdle(engine.Plan, a)),
            Faults = [.. faults.Select(f => new PracticeFault(f.Place, f.Size, f.Mended))],
        };
    }

    private static IReadOnlyList<double> Air(EngineState? state) => state is null ? [] : [.. state.Barrels.Select(b => b.Air)];
}
