using System.Globalization;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Practice.Talk;

/// <summary>Faults as people and programs name them.</summary>
internal static class FaultNames
{
    private static readonly Dictionary<string, BalanceFault> Short = new(StringComparer.OrdinalIgnoreCase)
    {
        ["plate"] = BalanceFault.PlateSeating,
        ["twisted"] = BalanceFault.TwistedSpindle,
        ["held"] = BalanceFault.StopNotTouching,
        ["rod"] = BalanceFault.RodLength,
        ["lever"] = BalanceFault.LeverAngle,
        ["leak"] = BalanceFault.LeakBelowPlate,
        ["seal"] = BalanceFault.MeterSeal,
        ["weak"] = BalanceFault.WeakCylinder,
        ["timing"] = BalanceFault.BankTiming,
        ["worn"] = BalanceFault.WornSpindle,
        ["dead"] = BalanceFault.DeadScrew,
    };

    /// <summary>How a fault is written.</summary>
    public static string Complaint { get; } =
        $"A fault and its place, such as \"leakBelowPlate barrel 3\", \"leverAngle carburettor 2\", \"bankTiming bank 1\", \"deadScrew screw stop:2\". Faults: {string.Join(", ", Enum.GetValues<BalanceFault>().Select(f => $"{Short.First(s => s.Value == f).Key} ({Name(f)} of a {FaultPlace.Counts(f)})"))}.";

    /// <summary>Reads one, by its name or its short word; null where it is none. Whether the place is on the engine is judged when it is looked for.</summary>
    public static FaultPlace? Read(string text, EnginePlan plan)
    {
        var words = text.Split([' ', '\t'], StringSplitOptions.RemoveEmptyEntries);
        if (words.Length < 2 || Of(words[0]) is not { } fault)
        {
            return null;
        }

        if (fault == BalanceFault.DeadScrew)
        {
            var rest = words[1..];
            var key = KeyWords.Read(string.Equals(rest[0], "screw", StringComparison.OrdinalIgnoreCase) ? rest[1..] : rest);
            return key.Length > 0 ? new(fault, 0, plan.Find(key)?.Key ?? key) : null;
        }

        var counts = words.Length == 2 || string.Equals(words[1], FaultPlace.Counts(fault), StringComparison.OrdinalIgnoreCase);
        return counts && words.Length <= 3 && int.TryParse(words[^1], NumberStyles.None, CultureInfo.InvariantCulture, out var place) ? new(fault, place) : null;
    }

    private static BalanceFault? Of(string word) =>
        Short.TryGetValue(word, out var fault) ? fault
        : Enum.GetValues<BalanceFault>().Select(f => (BalanceFault?)f).FirstOrDefault(f => string.Equals(f.ToString(), word, StringComparison.OrdinalIgnoreCase));

    private static string Name(BalanceFault fault) => char.ToLowerInvariant(fault.ToString()[0]) + fault.ToString()[1..];
}
