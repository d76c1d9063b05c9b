using Tickover.Web.Balance;
using Tickover.Web.Tanks;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Tanks;
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

    /// <summary>Tanks, sender and gauge.</summary>
    public static readonly WorksheetForm Tank = new(
        "tank", TankDocument.Format, Stage.Storage, "Tanks and gauge",
        "Shape of the tanks, a fill in steps, and ohms and needle against litres.",
        "/tank-document", ReadTank, TankEndpoints.Of);

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<WorksheetForm> All = [Tank, Plan];

    /// <summary>The form with a key.</summary>
    /// <param name="key">Its word in addresses.</param>
    /// <returns>The form; null where there is no such.</returns>
    public static WorksheetForm? Find(string key) => All.FirstOrDefault(f => string.Equals(f.Key, key, StringComparison.Ordinal));

    private static (string Name, IReadOnlyList<string> Faults) ReadPlan(string text)
    {
        var (plan, faults) = PlanDocument.Read(text);
        return (plan?.Name ?? "", faults);
    }

    private static (string Name, IReadOnlyList<string> Faults) ReadTank(string text)
    {
        var reading = TankDocument.Read(text);
        return (reading.Set?.Name ?? "", [.. reading.Faults.Select(f => $"{f.Path}: {f.Problem}; wanted: {f.Allowed}. {f.WhatToDo}")]);
    }
}
