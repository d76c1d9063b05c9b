using Tickover.Workshop.Visits;

namespace Tickover.Web.Papers;

/// <summary>What parts and time come to, beside what was estimated and agreed.</summary>
internal static class PaperSums
{
    private const decimal MinutesPerHour = 60;

    /// <summary>The sums in sentences.</summary>
    public static IReadOnlyList<string> Of(VisitRecord record)
    {
        var house = record.Workshop.House.Currency;
        var parts = record.Parts.Sum(p => p.Price ?? 0);
        return [Parts(record, parts, house), Time(record), Limit(record, parts, house), .. Extras(record, house)];
    }

    private static string Parts(VisitRecord record, decimal parts, string currency)
    {
        var unpriced = record.Parts.Count(p => p.Price is null);
        var without = unpriced switch { 0 => "", 1 => ", one of them without a price yet", _ => $", {unpriced} of them without a price yet" };
        var against = record.Visit.Estimate is { } estimate ? $" The whole work was estimated at {PaperWords.Money(estimate, currency)}." : " No price was estimated.";
        return $"Parts: {PaperWords.Money(parts, currency)} in {PaperWords.Count(record.Parts.Count, "line", "lines")}{without}.{against}";
    }

    private static string Time(VisitRecord record)
    {
        var minutes = record.Times.Sum(t => t.Minutes);
        var spent = $"Time: {PaperWords.Time(minutes)}";
        if (record.Visit.EstimateHours is not { } hours)
        {
            return $"{spent}. No hours were estimated.";
        }

        var left = (int)Math.Round((hours * MinutesPerHour) - minutes);
        return left >= 0
            ? $"{spent} of {PaperWords.Plain(hours)} h estimated; {PaperWords.Time(left)} left."
            : $"{spent}, {PaperWords.Time(-left)} more than the {PaperWords.Plain(hours)} h estimated.";
    }

    // Parts alone can be told against the limit: what an hour costs is not in the record.
    private static string Limit(VisitRecord record, decimal parts, string currency)
    {
        if (record.Visit.StopAndAsk is not { } limit)
        {
            return "No sum was agreed beyond which the owner is asked first.";
        }

        return parts > limit
            ? $"Stop and ask: parts alone are {PaperWords.Money(parts - limit, currency)} beyond the {PaperWords.Money(limit, currency)} agreed."
            : $"The owner is asked first beyond {PaperWords.Money(limit, currency)}; parts alone leave {PaperWords.Money(limit - parts, currency)} of it. What the hours cost is not counted here.";
    }

    private static IEnumerable<string> Extras(VisitRecord record, string currency)
    {
        var yes = record.Approvals.Where(a => a.Answer == ApprovalAnswer.Yes).Sum(a => a.Price ?? 0);
        if (yes > 0)
        {
            yield return $"The owner said yes to {PaperWords.Money(yes, currency)} more.";
        }
    }
}
