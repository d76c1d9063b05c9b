using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Balance.Recorded;
using Tickover.Workshop.Visits;

namespace Tickover.Workshop.FaultFinding.Recorded;

/// <summary>What rounds of readings say: causes their own account holds likely.</summary>
internal static class RoundEvidence
{
    private const double Likely = 0.3;

    public static IEnumerable<FaultEvidence> Of(VisitRecord record)
    {
        if (BalanceOfVisit.Of(record) is not { Steps.Count: > 0 } balance)
        {
            yield break;
        }

        var advice = BalanceAdvice.Of(new BalanceBook { Plan = balance.Plan, Steps = balance.Steps });
        foreach (var cause in advice.Causes.Where(c => c.Probability >= Likely))
        {
            if (Key(cause.Fault.Fault) is { } key)
            {
                yield return new FaultEvidence { Cause = key, Words = $"rounds of readings: {cause.Words}" };
            }
        }
    }

    private static string? Key(BalanceFault fault) => fault switch
    {
        BalanceFault.PlateSeating => "plate-misfit",
        BalanceFault.TwistedSpindle => "spindle-twisted",
        BalanceFault.StopNotTouching => "rod-holds-plates",
        BalanceFault.RodLength => "rod-length",
        BalanceFault.LeverAngle => "lever-angle",
        BalanceFault.LeakBelowPlate => "air-leak-one",
        BalanceFault.MeterSeal => "meter-seal",
        BalanceFault.WeakCylinder => "weak-cylinder",
        BalanceFault.BankTiming => "bank-timing",
        BalanceFault.DeadScrew => "idle-outlet-blocked",
        _ => null,
    };
}
