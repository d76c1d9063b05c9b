using Tickover.Workshop.Balance.Advising;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Recorded;

/// <summary>Names of banks and of faults for the pages.</summary>
public static class PlanWords
{
    /// <summary>A bank.</summary>
    /// <param name="plan">The engine.</param>
    /// <param name="bank">Its number, from 1.</param>
    /// <returns>Such as "Left bank".</returns>
    public static string Bank(EnginePlan plan, int bank) => BankNames.Of(plan, bank);

    /// <summary>A kind of fault in two or three words.</summary>
    /// <param name="fault">The fault.</param>
    /// <returns>Such as "Twisted spindle".</returns>
    public static string Fault(BalanceFault fault) => fault switch
    {
        BalanceFault.PlateSeating => "Plate seated askew",
        BalanceFault.TwistedSpindle => "Twisted spindle",
        BalanceFault.StopNotTouching => "Stop not touching",
        BalanceFault.RodLength => "Rod of the wrong length",
        BalanceFault.LeverAngle => "Lever at the wrong angle",
        BalanceFault.LeakBelowPlate => "Leak below the plate",
        BalanceFault.MeterSeal => "Meter does not seal",
        BalanceFault.WeakCylinder => "Weak cylinder",
        BalanceFault.BankTiming => "Timing of a bank late",
        BalanceFault.WornSpindle => "Worn spindle",
        _ => "Dead screw",
    };

    /// <summary>A fault and where it is.</summary>
    /// <param name="fault">The fault and its place.</param>
    /// <param name="plan">The engine.</param>
    /// <returns>Such as "Barrel 3, leak below the plate".</returns>
    public static string Fault(FaultPlace fault, EnginePlan plan)
    {
        ArgumentNullException.ThrowIfNull(fault);
        var words = Fault(fault.Fault);
        return $"{FaultWords.Where(fault, plan)}, {char.ToLowerInvariant(words[0])}{words[1..]}";
    }
}
