using Tickover.Web.Balance;
using Tickover.Web.Supply;
using Tickover.Web.Tanks;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Gauges;
using Tickover.Workshop.Leaks;
using Tickover.Workshop.StripDown.Build;
using Tickover.Workshop.StripDown.Jets;
using Tickover.Workshop.StripDown.Levels;
using Tickover.Workshop.StripDown.Wear;
using Tickover.Workshop.Supply;
using Tickover.Workshop.Tanks;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Walls;

namespace Tickover.Web.Worksheets;

/// <summary>Every kind of worksheet, in the order of the stages.</summary>
public static class WorksheetForms
{
    /// <summary>What stands on the engine, for cars that no car document describes.</summary>
    public static readonly WorksheetForm Plan = new(
        "plan", PlanDocument.Format, Stage.Balance, "What stands on the engine",
        "Carburettors, the cylinders each barrel feeds, and the throttle: for constant depression carburettors, motorcycles and every car without a description.",
        "/balance-explained", ReadPlan, BalanceEndpoints.Of);

    /// <summary>A survey of a tank's wall.</summary>
    public static readonly WorksheetForm Wall = Judged("wall", WallDocument.Format, Stage.Storage, "Wall of a tank", "Depths of pits or wall left, read on a grid over the tank, with the pads that hold water.", "/wall-document",
        text => WallDocument.Read(text) is var r ? (r.Survey?.Name ?? "", r.Faults) : default) with
    { Cautions = WallCautions.All };

    /// <summary>A leak test by falling pressure.</summary>
    public static readonly WorksheetForm Leak = Judged("leak", LeakDocument.Format, Stage.Storage, "Leak test of a tank", "Pressure and temperature over some minutes, at a pressure thin flat walls bear.", "/leak-document",
        text => LeakDocument.Read(text) is var r ? (r.Sheet?.Name ?? "", r.Faults) : default) with
    { Cautions = LeakCautions.All };

    /// <summary>Jets by stamp, gauge and flow.</summary>
    public static readonly WorksheetForm Jets = new(
        "jets", JetSheetDocument.Format, Stage.StripDown, "Jets by stamp, gauge and flow", "What is stamped on each, the largest gauge that goes in, and the time a measured volume takes through it.",
        "/jets-document", ReadJets, visit => WorksheetAddress.New(visit, Find("jets")!))
    { Cautions = JetCautions.All };

    /// <summary>Wear of stripped carburettors.</summary>
    public static readonly WorksheetForm Wear = Judged("wear", WearDocument.Format, Stage.StripDown, "Wear", "Spindles, plates, flanges, needles, pump shots and emulsion tubes, barrel by barrel.", "/wear-document",
        text => WearDocument.Read(text) is var r ? (r.Sheet?.Name ?? "", r.Faults) : default) with
    { Cautions = WearCautions.All };

    /// <summary>Float levels of a set.</summary>
    public static readonly WorksheetForm Level = Judged("level", LevelDocument.Format, Stage.Build, "Float levels", "Dry height and mass of each float, with its datum, seat, lever and pressure.", "/level-document",
        text => LevelDocument.Read(text) is var r ? (r.Sheet?.Name ?? "", r.Faults) : default) with
    { Cautions = LevelCautions.All };

    /// <summary>Bench settings before the first start.</summary>
    public static readonly WorksheetForm Build = Judged("build", BuildDocument.Format, Stage.Build, "Bench settings", "Idle speed, the car, and the rods that are to be of one length: plate gap, screws and rods to start from.", "/build-document",
        text => BuildDocument.Read(text) is var r ? (r.Sheet?.Name ?? "", r.Faults) : default) with
    { Cautions = BuildCautions.All };

    /// <summary>The fuel line from the tank to the float chambers.</summary>
    public static readonly WorksheetForm Supply = new(
        "supply", SupplyDocument.Format, Stage.Supply, "Fuel line",
        "The line from pick-up to float chambers part by part, the pump, what the engine takes, and readings taken on it.",
        "/supply-document", ReadSupply, SupplyEndpoints.Of)
    { Cautions = SupplyCautions.Lines };

    /// <summary>Tanks, sender and gauge.</summary>
    public static readonly WorksheetForm Tank = new(
        "tank", TankDocument.Format, Stage.Storage, "Tanks and gauge",
        "Shape of the tanks, a fill in steps, and ohms and needle against litres.",
        "/tank-document", ReadTank, TankEndpoints.Of);

    /// <summary>Linked tanks and their gauge on a road.</summary>
    public static readonly WorksheetForm Gauge = Judged("gauge", GaugeDocument.Format, Stage.Gauge, "Gauge on the road", "Both tanks, the pipe between them, the float, the gauge, and a road.", "/gauge-document",
        text => GaugeDocument.Read(text) is var r ? (r.Story?.Name ?? "", r.Faults) : default);

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<WorksheetForm> All = [Tank, Wall, Leak, Gauge, Supply, Jets, Wear, Level, Build, Plan];

    /// <summary>The forms of a stage.</summary>
    /// <param name="stage">The stage.</param>
    /// <returns>The forms in their order.</returns>
    public static IReadOnlyList<WorksheetForm> Of(Stage stage) => [.. All.Where(f => f.Stage == stage)];

    /// <summary>The form with a key.</summary>
    /// <param name="key">Its word in addresses.</param>
    /// <returns>The form; null where there is no such.</returns>
    public static WorksheetForm? Find(string key) => All.FirstOrDefault(f => string.Equals(f.Key, key, StringComparison.Ordinal));

    /// <summary>A fault in a sentence.</summary>
    internal static string Words(Fault fault) => $"{fault.Path}: {fault.Problem}. Wanted: {fault.Allowed}. {fault.WhatToDo}".TrimStart(':', ' ');

    private static WorksheetForm Judged(string key, string format, Stage stage, string title, string lead, string guide, Func<string, (string Name, IReadOnlyList<Fault> Faults)> read) => new(
        key, format, stage, title, lead, guide,
        text =>
        {
            var (name, faults) = read(text);
            return (name, [.. faults.Select(Words)]);
        },
        visit => WorksheetAddress.New(visit, Find(key)!));

    private static (string Name, IReadOnlyList<string> Faults) ReadJets(string text)
    {
        var (sheet, faults) = JetSheetDocument.Read(text);
        return (sheet?.Name ?? "", [.. faults.Select(Words)]);
    }

    private static (string Name, IReadOnlyList<string> Faults) ReadSupply(string text)
    {
        var read = SupplyDocument.Read(text);
        return (read.Supply?.Name ?? "", [.. read.Faults.Select(Words)]);
    }

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
