using Tickover.Reports.Paper;
using Tickover.Workshop.Visits.Authorities;
using Tickover.Workshop.Visits.Cautions;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>12: the safety sheet. Common practice of the trade; whom to defer to comes from the list of the workshop's country.</summary>
internal static class SafetyPart
{
    private static readonly HazardTopic[] OwnersTopics =
    [
        HazardTopic.PetrolVapour, HazardTopic.HotWork, HazardTopic.Storage, HazardTopic.Waste, HazardTopic.CarbonMonoxide,
        HazardTopic.Asbestos, HazardTopic.Lead, HazardTopic.VehicleSupport, HazardTopic.Batteries, HazardTopic.RoadEmissions,
    ];

    internal static IEnumerable<Block> Of(Telling t)
    {
        yield return new Heading(2, t.Say("Safety sheet"));
        yield return new Items(
        [
            t.Prose("Fire extinguisher: carry one that its label rates for petrol, within reach of the driver, and have it serviced."),
            Prose.Of(t.Say("Pump cut-off: ")).Then(CutOff(t)),
            t.Prose("No welding, brazing, soldering or grinding on a tank or near one, empty or not. Petrol vapour stays in seams for years. That is work for a specialist with a gas-free certificate."),
            t.Prose("Run the engine out of doors. Carbon monoxide has no smell."),
            t.Prose("Old gaskets, heat shields and clutch or brake linings may hold asbestos: do not scrape, blow or sand them."),
            t.Prose("Old deposits in tanks and carburettors may hold lead: gloves, and wash before you eat."),
            t.Prose("Keep petrol only in a can made for it, out of the house, and no more than your local rules allow."),
            t.Prose("Never go under a car that stands on a jack alone."),
        ]);
        yield return t.TableOr(
            "", "Whom to defer to", [new Column(""), new Column($"Whom to defer to: {AuthorityCatalogue.NameOf(t.House.Country)}")],
            [.. OwnersTopics.Select(topic => (IReadOnlyList<Prose>)[t.Prose(topic.Words()), Prose.Of(AuthorityCatalogue.For(t.House, topic).Words)])]);
        yield return t.Note("This sheet does not say that anything is safe. Local law, the maker\u2019s instructions and licensed trades come first; editions change, so read the one in force.");
        foreach (var block in Cautions(t))
        {
            yield return block;
        }
    }

    private static string CutOff(Telling t)
    {
        var row = t.Compared("pumpCutOff") is { } compared ? compared.Rows.Select(r => r.AsLeft ?? r.AsFound).FirstOrDefault(r => r is not null) : null;
        return row is null ? t.Say("where it is and what it does was not noted; ask us to show you.") : $"{t.Value(MeasureCatalogue.Find("pumpCutOff")!, row)}. {row.Reading.Note}".TrimEnd();
    }

    private static IEnumerable<Block> Cautions(Telling t)
    {
        yield return new Heading(3, t.Say("Cautions we confirmed before hazardous steps"));
        var seen = t.Record.Cautions.GroupBy(c => c.Caution, StringComparer.Ordinal).Select(g => g.Last()).ToList();
        yield return seen.Count == 0
            ? t.Tell("No confirmation of a caution is in the record.")
            : new Items([.. seen.Select(c => Prose.Bold(t.Say(CautionCatalogue.Find(c.Caution)?.Step ?? c.Caution)).Then($": {t.Name(c.Person)}{(c.KeptAt == default ? "" : $", {t.ShortDay(DateOnly.FromDateTime(c.KeptAt.DateTime))}")}"))]);
    }
}
