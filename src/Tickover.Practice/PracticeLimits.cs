using Tickover.Workshop.Balance.Plans;

namespace Tickover.Practice;

/// <summary>Within limits or not, by the accepted spreads of the trade (trade report 2.4, common practice).</summary>
public static class PracticeLimits
{
    private const double IdleAir = 0.5;
    private const double IdlePart = 0.1;
    private const double RaisedPart = 0.05;
    private const double IdleBankPart = 0.05;
    private const double RaisedBankPart = 0.03;

    /// <summary>Speeds an engine is judged at off idle.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>Speeds, rpm: 1,500 and 2,500; 1,500 of two constant-depression carburettors; 3,000 of a motorcycle (trade report 2.6, 2.8, 2.10).</returns>
    public static IReadOnlyList<double> Speeds(EnginePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Layout switch
        {
            PlanLayout.ConstantDepression => [1500],
            PlanLayout.MotorcycleFour => [3000],
            _ => [1500, 2500],
        };
    }

    /// <summary>Whether barrels are alike enough at idle.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="air">Air barrel by barrel, kg/h.</param>
    /// <returns>0.5 kg/h or a tenth of the mean, whichever is wider; bank means within 5 %. Of a motorcycle, whose barrels pass some 2 kg/h, a tenth: what 20 to 30 mmHg between columns comes to.</returns>
    public static bool AtIdle(EnginePlan plan, IReadOnlyList<double> air)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(air);
        var floor = plan.Layout == PlanLayout.MotorcycleFour ? 0 : IdleAir;
        return air.Count > 0 && air.All(a => Math.Abs(a - air.Average()) <= Math.Max(floor, IdlePart * air.Average())) && Banks(plan, air) <= IdleBankPart;
    }

    /// <summary>Whether barrels are alike enough off idle.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="air">Air barrel by barrel, kg/h.</param>
    /// <returns>Each within 5 % of the mean, bank means within 3 %.</returns>
    public static bool OffIdle(EnginePlan plan, IReadOnlyList<double> air)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(air);
        return air.Count > 0 && Worst(air) <= RaisedPart && Banks(plan, air) <= RaisedBankPart;
    }

    internal static double Worst(IReadOnlyList<double> air) => air.Count == 0 ? 1 : air.Max(a => Math.Abs((a / air.Average()) - 1));

    // bank mean from bank mean, of the mean
    private static double Banks(EnginePlan plan, IReadOnlyList<double> air)
    {
        var means = plan.Barrels.GroupBy(b => b.Bank).Select(g => g.Average(b => air[b.Number - 1])).ToList();
        return (means.Max() - means.Min()) / air.Average();
    }
}
