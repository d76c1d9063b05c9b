using System.Globalization;
using Tickover.Workshop.JetChoice;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.JetFittings;

/// <summary>Writes a chosen set into a visit: the car described anew, the stamped numbers as left, the shelf counted down, and what was expected.</summary>
public static class SetFitting
{
    // Parts whose size is also a reading of each barrel, and how a size is typed there.
    private static readonly Dictionary<string, string> Measures = new(StringComparer.Ordinal)
    {
        ["choke"] = "choke",
        ["mainJet"] = "mainJet",
        ["airCorrector"] = "airCorrector",
        ["idleJet"] = "idleJet",
        ["idleBleed"] = "idleBleed",
        ["screwTurns"] = "mixtureTurns",
        ["emulsionTube"] = "emulsionTube",
    };

    /// <summary>The items of the act.</summary>
    /// <param name="record">The visit.</param>
    /// <param name="chosen">The set, and why it was taken.</param>
    /// <param name="stock">The shelf.</param>
    /// <returns>The items; they are kept together or not at all.</returns>
    public static IReadOnlyList<RecordItem> Items(VisitRecord record, ChosenSet chosen, IReadOnlyList<StockJet> stock)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(chosen);
        ArgumentNullException.ThrowIfNull(stock);
        var proposal = chosen.Proposal;
        var latest = record.Descriptions is [.., var last] ? last.Since : DateOnly.MinValue;
        var description = new CarDescription
        {
            Id = Id.New<CarDescription>(),
            Car = record.Car.Id,
            Visit = record.Visit.Id,
            Since = chosen.Today < latest ? latest : chosen.Today,
            Document = proposal.Car.Document,
            Reason = $"{Words(proposal)}: {chosen.Choice}",
        };
        var fitting = new JetFitting
        {
            Id = Id.New<JetFitting>(),
            Visit = record.Visit.Id,
            On = chosen.Today,
            Choice = chosen.Choice,
            Description = description.Id,
            Parts = [.. proposal.Changes.Select(c => new FittedPart(c.Part, c.Label, c.From, c.To, c.Pieces))],
            RestsOn = chosen.RestsOn,
            ShareBefore = Unit(chosen.Before.InTargetOverall),
            Share = Unit(proposal.InTargetOverall),
            ShareLowest = Unit(proposal.ShareBand.Lowest),
            ShareHighest = Unit(proposal.ShareBand.Highest),
            Expected = proposal.Expected,
        };
        return [description, fitting, .. proposal.Changes.SelectMany(c => Readings(record, proposal, c, chosen.Now)), .. Taken(proposal, stock)];
    }

    /// <summary>The changes in a few words, such as "main jet 135 to 140, idle jet 50 to 55".</summary>
    /// <param name="proposal">The set.</param>
    /// <returns>The words.</returns>
    public static string Words(JetProposal proposal)
    {
        ArgumentNullException.ThrowIfNull(proposal);
        return string.Join(", ", proposal.Changes.Select(c => $"{c.Label.ToLowerInvariant()} {c.From} to {c.To}"));
    }

    private static double Unit(double share) => Math.Clamp(share, 0, 1);

    // A size the measure cannot read stays in the description alone.
    private static IEnumerable<Reading> Readings(VisitRecord record, JetProposal proposal, JetChange change, DateTimeOffset now)
    {
        if (!Measures.TryGetValue(change.Part, out var key) || MeasureCatalogue.Find(key) is not { } measure
            || MeasureText.Read(measure, change.To, UnitChoice.Metric) is not { IsRead: true } read)
        {
            return [];
        }

        var round = Guid.CreateVersion7();
        return proposal.Car.Barrels.Select(b => new Reading
        {
            Id = Id.New<Reading>(),
            Visit = record.Visit.Id,
            Stage = Stage.Mixture,
            Measure = key,
            Place = new Place(PlaceKind.Barrel, b.Number.ToString(CultureInfo.InvariantCulture)),
            Moment = Moment.AsLeft,
            Typed = read.Typed,
            Si = read.Si,
            Round = round,
            TakenAt = now,
            Note = change.Pieces == 0 ? "set with the jets" : "number stamped on the part fitted",
        });
    }

    private static IEnumerable<StockJet> Taken(JetProposal proposal, IReadOnlyList<StockJet> stock)
    {
        foreach (var change in proposal.Changes.Where(c => c.Pieces > 0))
        {
            var on = stock.FirstOrDefault(s => !s.Removed && s.Count > 0 && string.Equals(s.Part, change.Part, StringComparison.Ordinal)
                && string.Equals(JetParts.Find(s.Part)?.Text(s.Size), change.To, StringComparison.Ordinal));
            if (on is not null)
            {
                yield return on with { Count = Math.Max(0, on.Count - change.Pieces) };
            }
        }
    }
}
