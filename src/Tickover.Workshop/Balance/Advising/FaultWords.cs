using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>Faults in the words of the trade, and the check that shows each.</summary>
internal static class FaultWords
{
    private static readonly Dictionary<BalanceFault, (string What, string Check)> Table = new()
    {
        [BalanceFault.PlateSeating] = ("a plate seated askew, bent or upside down: off by the same air everywhere", "Engine off, hold it against the light: an even gap all round, or not. Reseat the plate with the stop backed off."),
        [BalanceFault.TwistedSpindle] = ("a twisted spindle: this plate stands at another angle than its neighbour, whatever the stop", "Engine off, take the carburettor off and look at both plates shut: a wire gauge goes under one of them."),
        [BalanceFault.StopNotTouching] = ("a rod holds the plates off their stop, so that the stop screw does nothing", "Pull a strip of paper between screw and lever: it comes out freely where they do not touch."),
        [BalanceFault.RodLength] = ("a rod of the wrong length: right on the stop, off as soon as the linkage moves", "Offer the rod to its ball with the plates shut: it drops on without moving a plate, or it does not."),
        [BalanceFault.LeverAngle] = ("a lever clamped at the wrong angle: the gap grows the further it opens", "Engine off, measure lever angles at rest and wide open against the neighbour's."),
        [BalanceFault.LeakBelowPlate] = ("air let in below the plate, which the meter does not see", "Engine off, smoke or low air into the runner, soap on the joints. Never spray fuel or cleaner at a hot engine."),
        [BalanceFault.MeterSeal] = ("the meter does not seal on this barrel: low by the same part everywhere", "Reseat the meter with its adaptor and read that barrel again."),
        [BalanceFault.WeakCylinder] = ("a weak cylinder: air and mixture right, vacuum low", "Compression and leak-down of that cylinder, clearances first."),
        [BalanceFault.BankTiming] = ("ignition of this bank late: its vacuum low and its headers hot", "Strobe on a lead of each bank; dwell and advance of both."),
        [BalanceFault.WornSpindle] = ("a worn spindle or ball joint: it never reads the same twice", "Push the spindle with a finger while reading: the figure must not change."),
        [BalanceFault.DeadScrew] = ("a screw that does nothing: seized, broken or its drilling blocked", "Count it in to its seat and back; blow the drilling through."),
    };

    /// <summary>What it is.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="plan">The engine.</param>
    /// <returns>Such as "Barrel 3: air let in below the plate, which the meter does not see".</returns>
    public static string What(FaultPlace fault, EnginePlan plan) => $"{Where(fault, plan)}: {Table[fault.Fault].What}.";

    /// <summary>The check that shows it.</summary>
    /// <param name="fault">The fault.</param>
    /// <returns>A sentence or two.</returns>
    public static string Check(FaultPlace fault) => Table[fault.Fault].Check;

    /// <summary>Where it is.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="plan">The engine.</param>
    /// <returns>Such as "Barrel 3" or "Left bank".</returns>
    public static string Where(FaultPlace fault, EnginePlan plan) => FaultPlace.Counts(fault.Fault) switch
    {
        "carburettor" => plan.Carburettors[fault.Place - 1].Words,
        "bank" => BankNames.Of(plan, fault.Place),
        "screw" => plan.Find(fault.Screw) is { } adjuster ? $"{adjuster.Where}, {adjuster.Thing}" : fault.Screw,
        _ => FormattableString.Invariant($"Barrel {fault.Place}"),
    };
}
