using System.Globalization;
using Tickover.Practice;
using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Advising;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Bench.Balance;

/// <summary>How long advice takes on twelve barrels, and where the time goes: <c>balance-plan</c>.</summary>
/// <remarks>A practice engine is balanced by advice; then the advice is asked for again as the book grows, so that the last has all of it to run through.</remarks>
internal static class PlanTime
{
    private const int Engines = 1;
    private const int Every = 6;                            // steps between two looks
    private const int Tries = 2;
    private const string Twelve =
        """
        { "format": "tickover-plan-1", "name": "Twelve", "layout": "two banks", "cylinders": 12, "sweptVolume": 330, "throttleBore": 40, "closedAngle": 8, "idleSpeed": 900, "bypass": true,
          "carburettors": [ { "name": "left front", "barrels": [[1], [2]] }, { "name": "left middle", "barrels": [[3], [4]] }, { "name": "left rear", "barrels": [[5], [6]] },
            { "bank": 2, "name": "right front", "barrels": [[7], [8]] }, { "bank": 2, "name": "right middle", "barrels": [[9], [10]] }, { "bank": 2, "name": "right rear", "barrels": [[11], [12]] } ] }
        """;

    internal static int Run()
    {
        var plan = PlanDocument.Read(Twelve).Plan!;
        var times = new Dictionary<string, List<double>>(StringComparer.Ordinal);
        var clock = Environment.CpuUsage.TotalTime;
        for (var seed = 1; seed <= Engines; seed++)
        {
            var engine = new Workbench(PracticeEngine.Start(plan, seed, difficulty: 1));
            var asked = 0;
            new AdvisedBalancer(_ => asked++).Balance(engine);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"engine {seed}: {asked} times advised, {engine.Steps.Count} steps, {(Environment.CpuUsage.TotalTime - clock).TotalSeconds:0.0} s of processor"));
            for (var steps = 1; steps <= engine.Steps.Count; steps += Every)
            {
                Measure(times, new BalanceBook { Plan = plan, Steps = [.. engine.Steps.Take(steps)], Meter = new MeterSettings { Available = PracticeEngine.AllKinds } });
            }
        }

        Console.WriteLine("part                       median ms   9 of 10 below   longest     times");
        foreach (var (part, all) in times)
        {
            all.Sort();
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{part,-26}{all[all.Count / 2],10:0.0}{all[all.Count * 9 / 10],16:0.0}{all[^1],10:0.0}{all.Count,10}"));
        }

        return 0;
    }

    private static void Measure(Dictionary<string, List<double>> times, BalanceBook book)
    {
        var meter = Repeats.Learn(book);
        var model = new InfluenceModel(book, meter);
        Note(times, "learning from the book", () => new InfluenceModel(book, meter));
        Note(times, "faults ranked", () => new FaultFinder(book, model, meter).Rank());
        if (model.Idle is { } idle)
        {
            Note(times, "moves planned at idle", () => Planner(book, [idle]).Make());
        }

        if (model.Held.ToList() is { Count: > 1 } held)
        {
            Note(times, "moves planned off idle", () => Planner(book, held).Make());
        }

        Note(times, "advice, all together", () => BalanceAdvice.Of(book));
    }

    private static MovePlanner Planner(BalanceBook book, IReadOnlyList<Condition> conditions) => new(conditions, book.Limits, _ => true, (a, turns) => Math.Clamp(turns, -a.TravelTurns, a.TravelTurns));

    // processor time, for what others do on the machine is none of ours; the best of two, for the first may still be compiled
    private static void Note(Dictionary<string, List<double>> times, string part, Func<object> work)
    {
        var best = double.PositiveInfinity;
        for (var k = 0; k < Tries; k++)
        {
            var before = Environment.CpuUsage.TotalTime;
            work();
            best = Math.Min(best, (Environment.CpuUsage.TotalTime - before).TotalMilliseconds);
        }

        if (!times.TryGetValue(part, out var all))
        {
            times[part] = all = [];
        }

        all.Add(best);
    }
}
