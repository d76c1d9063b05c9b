using System.Globalization;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Practice.Virtual;

/// <summary>What repairs cost, and whether a fault named can be on an engine at all.</summary>
internal static class RepairWork
{
    /// <summary>Minutes to look at a fault and mend it (assumed; a weak cylinder costs what finding it costs, its valve work is another job).</summary>
    public static double Minutes(BalanceFault fault) => fault switch
    {
        BalanceFault.MeterSeal => 3,
        BalanceFault.StopNotTouching or BalanceFault.RodLength => 10,
        BalanceFault.LeverAngle or BalanceFault.BankTiming => 15,
        BalanceFault.TwistedSpindle or BalanceFault.WornSpindle or BalanceFault.WeakCylinder => 60,
        _ => 30,
    };

    /// <summary>Why a place cannot be; null where it can.</summary>
    public static string? Unknown(EnginePlan plan, FaultPlace place)
    {
        if (place.Fault == BalanceFault.DeadScrew)
        {
            return plan.Find(place.Screw) is null ? $"There is no screw '{place.Screw}' on this engine." : null;
        }

        var counts = FaultPlace.Counts(place.Fault);
        var most = counts switch { "bank" => plan.Banks, "carburettor" => plan.Carburettors.Count, _ => plan.Barrels.Count };
        return place.Place >= 1 && place.Place <= most ? null : string.Create(CultureInfo.InvariantCulture, $"There is no {counts} {place.Place}; this engine has {most}.");
    }

    /// <summary>Whether two mean the same.</summary>
    public static bool Same(FaultPlace one, FaultPlace other) =>
        one.Fault == other.Fault && (one.Fault == BalanceFault.DeadScrew ? string.Equals(one.Screw, other.Screw, StringComparison.OrdinalIgnoreCase) : one.Place == other.Place);

    /// <summary>How many were hidden and how many named right.</summary>
    public static (int Hidden, int Found) Found(IReadOnlyList<HiddenFault> faults) => (faults.Count, faults.Count(f => f.Mended));
}
