namespace Tickover.Workshop.Visits.Advising;

/// <summary>What is missing before the account can be signed and the car handed back. Nothing is locked: it is said, and stays said on the account.</summary>
public static class HandOverBlockers
{
    /// <summary>What is missing.</summary>
    /// <param name="record">The visit.</param>
    /// <returns>Blockers, the gravest first.</returns>
    public static IReadOnlyList<HandOverBlocker> Of(VisitRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return [.. Findings(record), .. Papers(record)];
    }

    private static IEnumerable<HandOverBlocker> Findings(VisitRecord record)
    {
        var findings = record.Findings.Where(f => !f.Removed).ToList();
        foreach (var finding in findings.Where(f => f.Severity == Severity.Unsafe && f.State != FindingState.PutRight))
        {
            yield return new HandOverBlocker($"Tell the owner in writing what stands as unsafe: {finding.What}", "The car goes home with it, and the owner must know before the first mile.");
        }

        var open = findings.Count(f => f.Severity != Severity.Unsafe && f.State == FindingState.Open && f.Decision.Length == 0);
        if (open > 0)
        {
            yield return new HandOverBlocker("Decide what becomes of each finding", $"{(open == 1 ? "One finding has" : "Some findings have")} no decision, and the account lists them all.");
        }

        if (record.Approvals.Any(a => !a.Removed && a.Answer == ApprovalAnswer.Open))
        {
            yield return new HandOverBlocker("Get the owner's answer to what was asked", "A question is open.");
        }
    }

    private static IEnumerable<HandOverBlocker> Papers(VisitRecord record)
    {
        if (record.Visit.Summary.Length == 0)
        {
            yield return new HandOverBlocker("Write in one paragraph what was found", "It stands at the head of the account.");
        }

        if (record.Visit.OdometerOut is null)
        {
            yield return new HandOverBlocker("Read the odometer", "The account says how far the car was driven here.");
        }

        if (!record.Signatures.Any(s => !s.Removed))
        {
            yield return new HandOverBlocker("Sign the account", "Work without a name under it is nobody's.");
        }
    }
}
