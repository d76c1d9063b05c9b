namespace Tickover.Workshop.Visits.Gates;

/// <summary>Checks before the engine runs.</summary>
internal static class EngineChecks
{
    public static IReadOnlyList<GateCheck> All { get; } =
    [
        new()
        {
            Key = GateKeys.Leaks,
            Gate = Gate.EngineMayRun,
            Name = "the leak check",
            Words = "No leak anywhere, fuel at working pressure for 5 min or more, engine off",
            LookFor = "Pump on, engine off. Paper at every joint from tank to float chambers, torch underneath, nose last. One weep is a leak.",
            Seen = "Pressure, how long, what dry was proved with: \"0.24 bar, 5 min, dry by torch and paper\".",
            Otherwise = "Fuel that weeps cold sprays on a hot exhaust.",
            Source = "Common practice; a weep of none is the accepted limit",
            StaleAfter = Disturbance.FuelOrLinkage,
        },
        new()
        {
            Key = GateKeys.ThrottleFree,
            Gate = Gate.EngineMayRun,
            Name = "the throttle-free check",
            Words = "Throttle snaps shut from every position",
            LookFor = "Ten times out of ten from each opening, by pedal and by hand; two springs on; every plate on its stop.",
            Seen = "How often tried, which plates rest on their stops.",
            Otherwise = "An engine that starts at an open throttle destroys itself or runs someone down.",
            Source = "Common practice",
            StaleAfter = Disturbance.FuelOrLinkage,
        },
        new()
        {
            Key = GateKeys.Ventilation,
            Gate = Gate.EngineMayRun,
            Name = "the ventilation",
            Words = "Extraction on the tail pipe or the car outdoors; carbon monoxide alarm tested today",
            LookFor = "Hose on every tail pipe and drawing, doors open, alarm at head height tested by its button.",
            Seen = "What is on and open, alarm tested.",
            Otherwise = "Running indoors without extraction can kill within minutes.",
            Source = "HSE EH40/2005 workplace exposure limits for carbon monoxide; common practice",
            StaleAfter = Disturbance.NextDay,
        },
    ];
}
