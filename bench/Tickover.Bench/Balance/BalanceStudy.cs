using System.Globalization;
using Tickover.Workshop.Balance.Documents;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Bench.Balance;

/// <summary>How many moves and rounds it takes to within limits, by balancer, on practice engines: <c>balance-study [--engines N] [--seed N] [--layout a|b|c|d] [--balancer NAME]</c>.</summary>
internal static class BalanceStudy
{
    private const int UsualEngines = 500;

    // the four cases of the trade, each on the sample it stands for
    private static readonly (string Letter, string Name, string Sample)[] Layouts =
    [
        ("a", "(a) two banks", "osprey-v8.car.json"),
        ("b", "(b) in line", "tern-2800.car.json"),
        ("c", "(c) constant depression", "dunlin.plan.json"),
        ("d", "(d) motorcycle four", "wigeon.plan.json"),
    ];

    /// <summary>Who is compared; one made for each engine.</summary>
    private static readonly (string Name, Func<IBalancer> Make)[] Balancers =
    [
        ("habit", () => new HabitBalancer()),
        ("advice", () => new AdvisedBalancer()),
    ];

    internal static int Run(IReadOnlyList<string> words)
    {
        var (engines, seed, layout, balancer) = (UsualEngines, 1, (string?)null, (string?)null);
        for (var i = 0; i < words.Count; i += 2)
        {
            var value = i + 1 < words.Count ? words[i + 1] : "";
            switch (words[i])
            {
                case "--engines" when Number(value) is > 0 and var n:
                    engines = n;
                    break;
                case "--seed" when Number(value) is { } s:
                    seed = s;
                    break;
                case "--layout" when Layouts.Any(l => string.Equals(l.Letter, value, StringComparison.Ordinal)):
                    layout = value;
                    break;
                case "--balancer" when Balancers.Any(b => string.Equals(b.Name, value, StringComparison.Ordinal)):
                    balancer = value;
                    break;
                default:
                    Console.Error.WriteLine($"balance-study [--engines N] [--seed N] [--layout a|b|c|d] [--balancer {string.Join('|', Balancers.Select(b => b.Name))}]: '{words[i]} {value}' is not understood");
                    return 2;
            }
        }

        Console.WriteLine(BalanceTable.Head);
        foreach (var one in Layouts.Where(l => layout is null || string.Equals(l.Letter, layout, StringComparison.Ordinal)))
        {
            foreach (var (name, make) in Balancers.Where(b => balancer is null || string.Equals(b.Name, balancer, StringComparison.Ordinal)))
            {
                Layout(one, (name, make), engines, seed);
            }
        }

        return 0;
    }

    // a third of the engines healthy, a third with one fault, a third with two
    private static void Layout((string Letter, string Name, string Sample) layout, (string Name, Func<IBalancer> Make) balancer, int engines, int seed)
    {
        var plan = Plan(layout.Sample);
        var cases = new BalanceCase[engines];
        Parallel.For(0, engines, new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, Environment.ProcessorCount / 2) }, i => cases[i] = BalanceCase.Run(plan, balancer.Make(), seed + i, i % 3));
        foreach (var (name, which) in new[] { ("healthy", 0), ("one fault", 1), ("two faults", 2) })
        {
            Console.WriteLine(BalanceTable.Row(layout.Name, name, balancer.Name, [.. cases.Where(c => c.Difficulty == which)]));
        }
    }

    private static EnginePlan Plan(string sample)
    {
        var (plan, faults) = RoundsDocument.Plan(File.ReadAllText(Path.Combine(Samples.Root, "samples", sample)));
        return plan ?? throw new InvalidOperationException(string.Join(' ', faults));
    }

    private static int? Number(string text) => int.TryParse(text, NumberStyles.Integer, CultureInfo.InvariantCulture, out var number) ? number : null;
}
