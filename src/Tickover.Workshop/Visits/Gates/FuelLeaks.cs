namespace Tickover.Workshop.Visits.Gates;

/// <summary>Tells which findings speak of fuel that gets out.</summary>
public static class FuelLeaks
{
    private static readonly string[] Escapes = ["leak", "weep", "drip", "seep", "smell", "wet ", "spray", "perished"];

    private static readonly string[] Others = ["oil leak", "leaks oil", "coolant", "water leak", "leaks water", "brake fluid", "exhaust leak", "air leak", "vacuum leak", "false air"];

    /// <summary>Findings of a fuel leak that can hurt someone and are not put right.</summary>
    /// <remarks>Read from the words, since nobody ticks a box for it; when in doubt it is taken for a leak. One left or declined still leaks.</remarks>
    /// <param name="record">The visit.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Standing(VisitRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return record.Findings.Where(f => !f.Removed && f.Severity == Severity.Unsafe && f.State != FindingState.PutRight && Speaks(f));
    }

    private static bool Speaks(Finding finding)
    {
        var words = $"{finding.Where} {finding.What} {finding.Detail} ";
        return Holds(words, Escapes) && !Holds(words, Others);
    }

    private static bool Holds(string words, string[] any) => any.Any(a => words.Contains(a, StringComparison.OrdinalIgnoreCase));
}
