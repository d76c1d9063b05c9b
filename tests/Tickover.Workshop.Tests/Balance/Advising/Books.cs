using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Advising;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Tests.Balance.Advising;

/// <summary>Books written by hand, and engines to write them of.</summary>
internal static class Books
{
    public static MeterSettings Meter { get; } = new() { Available = ReadKinds.Air | ReadKinds.Vacuum | ReadKinds.Lambda | ReadKinds.Header };

    public static EnginePlan TwoBanks { get; } = PlanOfCar.Of(CarDocument.Read(Repository.Sample("osprey-v8")).Car!);

    public static EnginePlan InLine { get; } = PlanOfCar.Of(CarDocument.Read(Repository.Sample("tern-2800")).Car!);

    /// <summary>Twelve barrels on two banks, three twin carburettors to each.</summary>
    public static EnginePlan Twelve { get; } = Read(
        """
        { "format": "tickover-plan-1", "name": "Twelve", "layout": "two banks", "cylinders": 12, "sweptVolume": 330, "throttleBore": 40, "closedAngle": 8, "idleSpeed": 900, "bypass": true,
          "carburettors": [ { "name": "left front", "barrels": [[1], [2]] }, { "name": "left middle", "barrels": [[3], [4]] }, { "name": "left rear", "barrels": [[5], [6]] },
            { "bank": 2, "name": "right front", "barrels": [[7], [8]] }, { "bank": 2, "name": "right middle", "barrels": [[9], [10]] }, { "bank": 2, "name": "right rear", "barrels": [[11], [12]] } ] }
        """);

    public static BalanceBook Of(EnginePlan plan, params IEnumerable<BalanceStep> steps) => new() { Plan = plan, Steps = [.. steps], Meter = Meter };

    public static BalanceBook TwoBanksBook(params IEnumerable<BalanceStep> steps) => Of(TwoBanks, steps);

    /// <summary>A round at idle, the first barrel the same again, all at one speed.</summary>
    public static RoundRead Idle(params IReadOnlyList<double> air) => Round(null, air);

    public static RoundRead Held(double rpm, params IReadOnlyList<double> air) => Round(rpm, air);

    public static RoundRead Round(double? held, IReadOnlyList<double> air, Func<BarrelReading, BarrelReading>? with = null)
    {
        var readings = air.Select((a, i) => new BarrelReading(i + 1) { Air = a, Rpm = held ?? 900 }).Select(with ?? (r => r)).ToList();
        return new RoundRead(new BalanceRound { Number = 1, HeldRpm = held, Readings = readings, Again = readings[0] });
    }

    /// <summary>Some barrels of a round at idle.</summary>
    public static RoundRead Some(params IReadOnlyList<(int Barrel, double Air)> read) =>
        new(new BalanceRound { Number = 1, Readings = [.. read.Select(r => new BarrelReading(r.Barrel) { Air = r.Air, Rpm = 900 })] });

    public static InfluenceModel Model(BalanceBook book) => new(book, Repeats.Learn(book));

    public static double[] All(EnginePlan plan, double air) => [.. plan.Barrels.Select(_ => air)];

    /// <summary>All barrels at a figure but some.</summary>
    public static double[] But(EnginePlan plan, double air, params IReadOnlyList<(int Barrel, double Air)> other)
    {
        var all = All(plan, air);
        foreach (var (barrel, its) in other)
        {
            all[barrel - 1] = its;
        }

        return all;
    }

    private static EnginePlan Read(string json)
    {
        var (plan, faults) = PlanDocument.Read(json);
        Assert.True(plan is not null, string.Join(' ', faults));
        return plan;
    }
}
