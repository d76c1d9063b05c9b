using Tickover.Web.Balance;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Worksheets;

/// <summary>Every kind of worksheet, in the order of the stages.</summary>
public static class WorksheetForms
{
    /// <summary>What stands on the engine, for cars that no car document describes.</summary>
    public static readonly WorksheetForm Plan = new(
        "plan", PlanDocument.Format, Stage.Balance, "What stands on the engine",
        "Carburettors, the cylinders each barrel feeds, and the throttle: for constant depression carburettors, motorcycles and every car without a description.",
        "/balance", ReadPlan, BalanceEndpoints.Of);

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<WorksheetForm> All = [Plan];

    /// <summary>The form with a key.</summary>
    /// <param name="key">Its word in addresses.</param>
    /// <returns>The form; null where there is no such.</returns>
    public static WorksheetForm? Find(string key) => All.FirstOrDefault(f => string.Equals(f.Key, key, StringComparison.Ordinal));

    private static (string Name, IReadOnlyList<string> Faults) ReadPlan(string text)
    {
        var (plan, faults) = PlanDocument.Read(text);
        return (plan?.Name ?? "", faults);
    }
}
