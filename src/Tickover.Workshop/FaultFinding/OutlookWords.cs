using System.Globalization;

namespace Tickover.Workshop.FaultFinding;

/// <summary>Says what an outlook means.</summary>
public static class OutlookWords
{
    private const double Likely = 0.5, Possible = 0.2, Less = 0.05;
    private const double SeveralWorthSaying = 0.25;
    private const double Certain = 0.995, Nothing = 0.005;

    /// <summary>A probability as a figure.</summary>
    /// <param name="chance">From 0 to 1.</param>
    /// <returns>Such as "84 %"; never 0 or 100 %.</returns>
    public static string Percent(double chance) => chance switch
    {
        >= Certain => "over 99 %",
        < Nothing => "under 1 %",
        _ => string.Create(CultureInfo.InvariantCulture, $"{chance * 100:0} %"),
    };

    /// <summary>A probability in words.</summary>
    /// <param name="chance">From 0 to 1.</param>
    /// <returns>A word or two.</returns>
    public static string Chance(double chance) => chance switch
    {
        >= FaultFinder.Stands => "stands",
        >= Likely => "likely",
        >= Possible => "possible",
        >= Less => "less likely",
        _ => "unlikely",
    };

    /// <summary>How far it has got, in a line.</summary>
    /// <param name="outlook">The outlook.</param>
    /// <returns>A sentence.</returns>
    public static string Standing(FaultOutlook outlook)
    {
        ArgumentNullException.ThrowIfNull(outlook);
        var found = string.Join("; ", outlook.Found.Select(r => $"{r.Cause.Words} ({Percent(r.Probability)})"));
        return outlook.Standing switch
        {
            FaultStanding.Found => $"{(outlook.Found.Count() > 1 ? "These stand" : "One cause stands")}: {found}.",
            FaultStanding.Exhausted when found.Length > 0 => $"{found} stands, and what is left would not tell more about the rest.",
            FaultStanding.Exhausted => "No cause stands, and no test that is left would tell enough. Time for a specialist, or for another symptom.",
            _ when found.Length > 0 => $"{found} stands, but does not explain everything that was told.",
            _ => "Not settled yet.",
        };
    }

    /// <summary>What is not known: other causes, several at once, symptoms without a cause.</summary>
    /// <param name="outlook">The outlook.</param>
    /// <returns>Sentences.</returns>
    public static IReadOnlyList<string> Doubts(FaultOutlook outlook)
    {
        ArgumentNullException.ThrowIfNull(outlook);
        var doubts = new List<string> { $"Something that this table does not hold: {Percent(outlook.Other)}." };
        if (outlook.Several >= SeveralWorthSaying)
        {
            doubts.Add($"Two or more at once: {Percent(outlook.Several)}. Mend what stands first, then look whether the trouble has gone.");
        }

        if (outlook.Found.Any() && outlook.Standing != FaultStanding.Found)
        {
            doubts.AddRange(outlook.Unexplained.Select(s => $"Not explained by what stands: {s.Words}."));
        }

        return doubts;
    }

    /// <summary>What to do about a cause that stands.</summary>
    /// <param name="rank">The cause.</param>
    /// <returns>A sentence.</returns>
    public static string ToDo(FaultRank rank)
    {
        ArgumentNullException.ThrowIfNull(rank);
        return $"{Capital(rank.Cause.ToDo)}. Then look whether the trouble has gone.";
    }

    /// <summary>Where the chance of a cause before any symptom comes from.</summary>
    /// <param name="cause">The cause.</param>
    /// <returns>A sentence.</returns>
    public static string Prior(FaultCause cause)
    {
        ArgumentNullException.ThrowIfNull(cause);
        var prior = $"Before anything is told: {Percent(cause.Prior)} of cars ({cause.Origin}; confidence {cause.Confidence}).";
        return cause.Closed.Of == 0 ? prior : string.Create(CultureInfo.InvariantCulture, $"{prior} With closed cases, {cause.Closed.Found} of {cause.Closed.Of}: {Percent(cause.Learned)}.");
    }

    /// <summary>A text with a capital letter.</summary>
    /// <param name="text">The text.</param>
    /// <returns>It.</returns>
    public static string Capital(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
    }
}
