using Tickover.Workshop.FaultFinding;
using Tickover.Workshop.FaultFinding.Recorded;
using Tickover.Workshop.Leaks;
using Tickover.Workshop.StripDown.Jets;
using Tickover.Workshop.Supply;
using Tickover.Workshop.Tests.Visits.Measures;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Walls;

namespace Tickover.Workshop.Tests.FaultFinding;

public sealed class VisitEvidenceTests
{
    [Theory]
    [InlineData("leakDown", "3", "28", "weak-cylinder", false)]
    [InlineData("leakDown", "3", "8", "weak-cylinder", true)]
    [InlineData("needleHolds", "1", "4", "float-valve-leak", false)]
    [InlineData("fuelPressure", "", "0.35", "fuel-pressure-high", false)]
    [InlineData("fuelPressure", "", "0.10", "pump-weak", false)]
    [InlineData("fuelPressure", "", "0.20", "pump-weak", true)]
    [InlineData("vent", "left", "blocked", "vent-blocked", false)]
    [InlineData("crossPipe", "", "clear", "crosspipe-blocked", true)]
    [InlineData("airLeak", "2", "base", "air-leak-one", false)]
    [InlineData("percolation", "1", "drip", "percolation", false)]
    public void A_reading_speaks_for_or_against_a_cause(string measure, string place, string typed, string cause, bool against)
    {
        var book = new Notebook();
        book.Read(measure, place, typed);

        var evidence = Assert.Single(VisitEvidence.Of(book.Record()), e => string.Equals(e.Cause, cause, StringComparison.Ordinal));

        Assert.Equal(against, evidence.Against);
        Assert.Contains(typed, evidence.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_last_reading_of_a_place_counts()
    {
        var book = new Notebook();
        book.Read("leakDown", "3", "28", Moment.AsFound);
        book.Read("leakDown", "3", "8");

        Assert.True(VisitEvidence.Of(book.Record()).Single(e => e.Cause is "weak-cylinder").Against);
    }

    [Fact]
    public void One_blocked_vent_counts_beside_a_clear_one()
    {
        var book = new Notebook();
        book.Read("vent", "left", "clear");
        book.Read("vent", "right", "blocked");

        Assert.False(VisitEvidence.Of(book.Record()).Single(e => e.Cause is "vent-blocked").Against);
    }

    [Theory]
    [InlineData(LeakDocument.Format, "tern.leak.json", "tank-upper-seam", false)]
    [InlineData(LeakDocument.Format, "gannet.leak.json", "tank-upper-seam", true)]
    [InlineData(WallDocument.Format, "tern.wall.json", "tank-pitting", false)]
    [InlineData(JetSheetDocument.Format, "gannet.jets.json", "idle-jet-blocked", false)]
    [InlineData(SupplyDocument.Format, "tern.supply.json", "filter-clogged", false)]
    public void A_kept_worksheet_speaks_with_its_verdict(string format, string sample, string cause, bool against)
    {
        var book = new Notebook().Record();
        var record = book with { Worksheets = [new Worksheet { Visit = book.Visit.Id, Form = format, Name = "kept", Document = Repository.Read($"samples/{sample}") }] };

        Assert.Equal(against, VisitEvidence.Of(record).Single(e => string.Equals(e.Cause, cause, StringComparison.Ordinal)).Against);
    }

    [Fact]
    public void What_the_record_says_is_of_the_table_of_the_trade_and_moves_its_causes()
    {
        var book = new Notebook();
        book.Read("leakDown", "3", "28");
        var evidence = VisitEvidence.Of(book.Record());

        double Weak(IReadOnlyList<FaultEvidence> record) =>
            FaultFinder.Weigh(FaultKnowledge.Standard, new FaultCase { Symptoms = ["balanced-rough"], Record = record }).Ranking.Single(r => r.Cause.Key is "weak-cylinder").Probability;

        Assert.All(evidence, e => Assert.True(FaultKnowledge.Standard.Causes.ContainsKey(e.Cause), e.Cause));
        Assert.True(Weak(evidence) > Weak([]) + 0.1);
    }

    [Fact]
    public void An_empty_record_says_nothing() => Assert.Empty(VisitEvidence.Of(new Notebook().Record()));
}
