using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Authorities;
using Tickover.Workshop.Visits.Cautions;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Workshop.Tests.Visits.Cautions;

public sealed class CautionCatalogueTests
{
    [Fact]
    public void Every_hazard_of_the_job_has_its_caution()
    {
        string[] wanted =
        [
            "under-car", "battery", "draining", "fuel-joint", "tank-water", "tank-air", "de-rust", "hot-work", "sender", "pump-flow", "waste-fuel",
            "asbestos", "residues", "solvent", "compressed-air", "first-start", "indoors", "air-leaks", "strobe", "hands-linkage", "mercury",
            "exhaust-probe", "jammed-throttle", "road-test", "hot-soak",
        ];

        Assert.Equal(string.Join(' ', wanted.Order(StringComparer.Ordinal)), string.Join(' ', CautionCatalogue.All.Select(c => c.Key).Order(StringComparer.Ordinal)));
    }

    [Fact]
    public void Each_says_one_act_first_why_and_three_to_six_conditions()
    {
        Assert.All(CautionCatalogue.All, c =>
        {
            Assert.InRange(c.Conditions.Count, 3, 6);
            Assert.NotEmpty(c.Topics);
            Assert.All<string>([c.Step, c.First, c.Why, c.EnterAfterwards, .. c.Conditions], t => Assert.False(string.IsNullOrWhiteSpace(t), c.Key));
            Assert.False(c.First.EndsWith('.'), c.Key);
            Assert.EndsWith(".", c.Why, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Petrol_vapour_keeps_the_tablet_outside_the_zone()
    {
        string[] open = ["draining", "fuel-joint", "tank-water", "tank-air", "de-rust", "hot-work", "sender", "pump-flow", "first-start"];

        Assert.All(open, key => Assert.Equal(TabletPlace.OutsideZone, CautionCatalogue.Find(key)!.Tablet));
    }

    [Fact]
    public void Hot_work_is_never_done_here_and_there_is_no_recipe_for_it()
    {
        var caution = CautionCatalogue.Find("hot-work")!;

        Assert.True(caution.NeverHere);
        Assert.Equal("Stop: this is never done here", caution.First);
        Assert.Contains(caution.Conditions, c => c.Contains("gas-free certificate", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_is_ever_called_safe()
    {
        var cautions = CautionCatalogue.All.SelectMany(c => new[] { c.Step, c.First, c.Why, c.EnterAfterwards }.Concat(c.Conditions));
        var gates = GateCatalogue.All.SelectMany(g => g.Checks.SelectMany(c => new[] { c.Name, c.Words, c.LookFor, c.Seen, c.Otherwise }).Append(g.Name).Append(g.Before));

        Assert.All(cautions.Concat(gates), text => Assert.DoesNotMatch(CalledSafe.Pattern(), text));
        Assert.Contains("does not say that anything is safe", Caution.Closing, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_topic_has_an_authority_in_every_country_with_source_and_mark()
    {
        Assert.All(AuthorityCatalogue.Countries, country => Assert.All(Enum.GetValues<HazardTopic>(), topic =>
        {
            var line = Assert.Single(AuthorityCatalogue.Of(country), a => a.Topic == topic);
            Assert.All<string>([line.Name, line.Body, line.Source], t => Assert.False(string.IsNullOrWhiteSpace(t), $"{country} {topic}"));
            Assert.Equal(line.Mark == AuthorityMark.FromMemory, line.Words.Contains("from memory, check the edition", StringComparison.Ordinal));
        }));
    }

    [Fact]
    public void The_workshops_own_words_stand_in_place_of_the_built_in_line()
    {
        var house = new House { Country = "IE", OwnAuthorities = new Dictionary<string, string>(StringComparer.Ordinal) { ["petrol-vapour"] = "Our zone plan, folder 3" } };

        Assert.Equal("Our zone plan, folder 3", AuthorityCatalogue.For(house, HazardTopic.PetrolVapour).Words);
        Assert.Contains("S.I. 311/1979", AuthorityCatalogue.For(house, HazardTopic.Storage).Name, StringComparison.Ordinal);
        Assert.Contains("local law", AuthorityCatalogue.For(new House { Country = "NZ" }, HazardTopic.Storage).Name, StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_of_cautions_is_generated() => Repository.AssertGenerated("docs/cautions.md", CautionGuide.Generate());
}
