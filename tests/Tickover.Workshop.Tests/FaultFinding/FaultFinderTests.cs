using Tickover.Workshop.FaultFinding;

namespace Tickover.Workshop.Tests.FaultFinding;

public sealed class FaultFinderTests
{
    private static readonly FaultKnowledge Trade = FaultKnowledge.Standard;

    [Fact]
    public void Ranks_a_small_table_as_worked_out_by_hand()
    {
        // sets: none 0.8*0.9 = 0.72, jet 0.2*0.9 = 0.18, coil 0.8*0.1 = 0.08, both 0.02
        // stops: none 0.1; jet 1-0.9*0.5 = 0.55; coil 1-0.9*0.2 = 0.82; both 1-0.9*0.5*0.2 = 0.91
        // joint: 0.072, 0.099, 0.0656, 0.0182; sum 0.2548
        var outlook = FaultFinder.Weigh(SmallTable.Knowledge, new FaultCase { Symptoms = ["stops"] });

        Assert.Equal(0.072 / 0.2548, outlook.Other, 1e-9);
        Assert.Equal((0.099 + 0.0182) / 0.2548, Of(outlook, "jet"), 1e-9);
        Assert.Equal((0.0656 + 0.0182) / 0.2548, Of(outlook, "coil"), 1e-9);
        Assert.Equal("jet", outlook.Ranking[0].Cause.Key);
    }

    [Fact]
    public void An_answer_may_be_wrong_and_is_weighed_as_such()
    {
        // see-jet yes: by hand 0.96 P + 0.04 (1-P) with P(yes|jet) = 1-0.9*0.1 = 0.91 and 0.1 otherwise: 0.8772 and 0.132
        var outlook = FaultFinder.Weigh(SmallTable.Knowledge, new FaultCase { Symptoms = ["stops"], Answers = [new("see-jet", "yes")] });

        var (jet, rest) = (0.1172 * 0.8772, 0.1376 * 0.132);
        Assert.Equal(jet / (jet + rest), Of(outlook, "jet"), 1e-9);
    }

    [Fact]
    public void What_looks_alike_and_is_ignition_is_asked_first_though_it_takes_longer()
    {
        var next = FaultFinder.Weigh(SmallTable.Knowledge, new FaultCase { Symptoms = ["stops"] }).Next!;

        Assert.Equal("see-spark", next.Test.Key);
        Assert.Contains("looked at first", next.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void What_looks_alike_is_not_asked_first_once_it_cannot_explain_all()
    {
        var next = FaultFinder.Weigh(Trade, new FaultCase { Symptoms = ["dies-after-miles", "one-tank-empties"] }).Next!;

        Assert.DoesNotContain("looked at first", next.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cause_that_is_ruled_out_is_gone_and_the_rest_share_its_chance()
    {
        var all = FaultFinder.Weigh(Trade, new FaultCase { Symptoms = ["dies-after-miles"] });
        var less = FaultFinder.Weigh(Trade, new FaultCase { Symptoms = ["dies-after-miles"], RuledOut = ["vent-blocked"] });

        Assert.DoesNotContain(less.Ranking, r => r.Cause.Key is "vent-blocked");
        Assert.True(Of(less, "pickup-dirty") > Of(all, "pickup-dirty"));
        Assert.True(less.Other > all.Other);
    }

    [Fact]
    public void With_all_ruled_out_it_says_so_and_that_it_knows_nothing_else()
    {
        var outlook = FaultFinder.Weigh(Trade, new FaultCase { Symptoms = ["oil-rises"], RuledOut = ["float-valve-leak", "pump-diaphragm"] });

        Assert.Equal(FaultStanding.Exhausted, outlook.Standing);
        Assert.Equal(1, outlook.Other, 1e-9);
        Assert.Contains("ruled out too soon", Assert.Single(outlook.Contradictions), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_answers_to_one_test_are_called_a_contradiction()
    {
        var outlook = FaultFinder.Weigh(Trade, new FaultCase { Symptoms = ["dies-after-miles"], Answers = [new("look-vent-blocked", "yes"), new("look-vent-blocked", "no")] });

        Assert.Contains(outlook.Contradictions, c => c.Contains("answered in two ways: yes, no", StringComparison.Ordinal));
    }

    [Fact]
    public void An_answer_against_all_that_was_said_before_is_spoken_of()
    {
        var outlook = FaultFinder.Weigh(Trade, new FaultCase { Symptoms = ["dies-after-miles"], Answers = [new("look-vent-blocked", "yes"), new("look-coil-hot", "no"), new("open-cap-spark", "no-spark")] });

        Assert.Contains(outlook.Contradictions, c => c.Contains("goes against what was said before", StringComparison.Ordinal));
    }

    [Fact]
    public void Unsure_says_nothing_and_is_not_asked_again()
    {
        var before = FaultFinder.Weigh(Trade, new FaultCase { Symptoms = ["flat-spot-stab"] });
        var after = FaultFinder.Weigh(Trade, new FaultCase { Symptoms = ["flat-spot-stab"], Answers = [new(before.Next!.Test.Key, "", FaultCertainty.Unsure)] });

        Assert.All(after.Ranking, r => Assert.Equal(Of(before, r.Cause.Key), r.Probability, 1e-12));
        Assert.NotEqual(before.Next.Test.Key, after.Next!.Test.Key, StringComparer.Ordinal);
    }

    [Fact]
    public void Leaning_moves_less_than_sure()
    {
        double Jet(FaultCertainty how) => Of(FaultFinder.Weigh(SmallTable.Knowledge, new FaultCase { Symptoms = ["stops"], Answers = [new("see-jet", "yes", how)] }), "jet");

        Assert.InRange(Jet(FaultCertainty.Leaning), Jet(FaultCertainty.Unsure) + 0.05, Jet(FaultCertainty.Sure) - 0.05);
    }

    [Fact]
    public void Two_faults_at_once_are_both_found()
    {
        var outlook = FaultFinder.Weigh(Trade, new FaultCase { Symptoms = ["one-tank-empties", "flat-spot-stab"], Answers = [new("levels-caps", "blocked"), new("look-crosspipe-blocked", "yes"), new("watch-shots", "one-weak")] });

        Assert.Equal(FaultStanding.Found, outlook.Standing);
        Assert.Equal(["crosspipe-blocked", "pump-nozzle-blocked"], outlook.Found.Select(f => f.Cause.Key).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.True(outlook.Several > 0.9);
    }

    [Fact]
    public void One_found_of_two_symptoms_leaves_the_case_open()
    {
        var outlook = FaultFinder.Weigh(Trade, new FaultCase { Symptoms = ["one-tank-empties", "flat-spot-stab"], Answers = [new("watch-shots", "one-weak")] });

        Assert.Equal(FaultStanding.Open, outlook.Standing);
        Assert.Contains(OutlookWords.Doubts(outlook), d => d.Contains("One tank empties", StringComparison.Ordinal));
    }

    [Fact]
    public void The_record_speaks_for_and_against_a_cause()
    {
        double Pump(FaultEvidence? record) => Of(FaultFinder.Weigh(Trade, new FaultCase { Symptoms = ["flags-on-hills"], Record = record is null ? [] : [record] }), "pump-weak");
        var (against, none, spoken) = (Pump(new FaultEvidence { Words = "w", Cause = "pump-weak", Against = true }), Pump(null), Pump(new FaultEvidence { Words = "w", Cause = "pump-weak" }));

        Assert.True(against < none && none < spoken, $"{against} {none} {spoken}");
    }

    [Fact]
    public void The_same_look_is_not_asked_twice()
    {
        var given = new FaultCase { Symptoms = ["no-idle"], Answers = [new("swap-idle-jet", "stays")] };
        while (FaultFinder.Weigh(Trade, given).Next is { } next)
        {
            Assert.NotEqual("look-idle-jet-blocked", next.Test.Key, StringComparer.Ordinal);
            given = given.With(new FaultGiven(next.Test.Key, string.Empty, FaultCertainty.Unsure));
        }

        Assert.True(given.Answers.Count > 3);
    }

    [Fact]
    public void A_case_without_a_known_symptom_is_refused() =>
        Assert.Throws<ArgumentException>(() => FaultFinder.Weigh(Trade, new FaultCase { Symptoms = ["nothing"] }));

    private static double Of(FaultOutlook outlook, string cause) => outlook.Ranking.Single(r => string.Equals(r.Cause.Key, cause, StringComparison.Ordinal)).Probability;
}
