using System.Globalization;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Reports.Tests.Balance;

/// <summary>Plans of engines for the pictures.</summary>
internal static class Plans
{
    internal static IReadOnlyList<EnginePlan> All { get; } =
    [
        InLine(4), InLine(6), InLine(8), TwoBanks(4), TwoBanks(6), TwoBanks(8), TwoBanks(12),
        Read("constant depression", 4, 500, "[{ \"barrels\": [[1, 2]] }, { \"barrels\": [[3, 4]] }]"),
        Read("motorcycle four", 4, 180, "[{ \"barrels\": [[1]] }, { \"barrels\": [[2]] }, { \"barrels\": [[3]] }, { \"barrels\": [[4]] }]"),
    ];

    internal static EnginePlan InLine(int barrels) => Read("in line", barrels, 450, Twins(1, barrels, _ => ""));

    internal static EnginePlan TwoBanks(int barrels) => Read(
        "two banks", barrels, 350,
        $"[{Twins(1, barrels / 2, k => $"\"name\": \"left {Word(k)}\", ")[1..^1]}, {Twins(barrels / 2 + 1, barrels / 2, k => $"\"bank\": 2, \"name\": \"right {Word(k)}\", ")[1..^1]}]");

    private static string Word(int k) => k == 0 ? "front" : k == 1 ? "middle" : "rear";

    private static string Twins(int first, int count, Func<int, string> more) => $"[{string.Join(", ", Enumerable.Range(0, (count + 1) / 2).Select(k =>
        string.Create(CultureInfo.InvariantCulture, $"{{ {more(k)}\"barrels\": [[{first + 2 * k}]{(2 * k + 1 < count ? $", [{first + 2 * k + 1}]" : "")}] }}")))}]";

    private static EnginePlan Read(string layout, int cylinders, double swept, string carburettors)
    {
        var (plan, faults) = PlanDocument.Read(string.Create(
            CultureInfo.InvariantCulture,
            $"{{ \"format\": \"tickover-plan-1\", \"name\": \"{layout} of {cylinders}\", \"layout\": \"{layout}\", \"cylinders\": {cylinders}, \"sweptVolume\": {swept}, \"throttleBore\": 40, \"closedAngle\": 8, \"idleSpeed\": 900, \"bypass\": true, \"carburettors\": {carburettors} }}"));
        Assert.Empty(faults);
        return plan!;
    }
}
