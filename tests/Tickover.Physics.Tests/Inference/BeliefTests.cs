using Tickover.Physics.Inference;

namespace Tickover.Physics.Tests.Inference;

public sealed class BeliefTests
{
    private const double Close = 1e-9;

    [Fact]
    public void One_of_two_causes_after_a_sign_is_as_worked_out_by_hand()
    {
        // sets: none 0.72, a 0.08, b 0.18, both 0.02; sign: leak 0.1, a 0.8, b 0.5
        // P(sign): none 0.1, a 1 - 0.9*0.2 = 0.82, b 1 - 0.9*0.5 = 0.55, both 1 - 0.9*0.2*0.5 = 0.91
        // joint: 0.072, 0.0656, 0.099, 0.0182; sum 0.2548
        var observed = Belief.Before([0.1, 0.2], 2).After(new NoisyOr(0.1, [0.8, 0.5]), NoisyOr.Present, default);

        Assert.Equal(0.2548, observed.Chance, Close);
        Assert.Equal((0.0656 + 0.0182) / 0.2548, observed.Belief.Of(0), Close);
        Assert.Equal((0.099 + 0.0182) / 0.2548, observed.Belief.Of(1), Close);
        Assert.Equal(0.072 / 0.2548, observed.Belief.None, Close);
        Assert.Equal(0.0182 / 0.2548, observed.Belief.SeveralAtOnce(), Close);
    }

    [Fact]
    public void A_wrong_answer_now_and_then_softens_what_it_tells()
    {
        // even odds, a sure sign: right 0.9, wrong 0.1 of the time -> 0.9
        var belief = Belief.Before([0.5], 1);
        var model = new NoisyOr(0, [1]);

        Assert.Equal(0.9, belief.After(model, NoisyOr.Present, new Telling(0.1, 0)).Belief.Of(0), Close);
        Assert.Equal(1, belief.After(model, NoisyOr.Present, default).Belief.Of(0), Close);
    }

    [Fact]
    public void An_impossible_answer_leaves_the_belief_and_says_so()
    {
        var belief = Belief.Before([0.3], 1);

        var observed = belief.After(new NoisyOr(0, [0]), NoisyOr.Present, default);

        Assert.Equal(0, observed.Chance);
        Assert.Equal(0.3, observed.Belief.Of(0), Close);
    }

    [Fact]
    public void A_sure_sign_of_an_even_cause_tells_one_bit_and_nothing_when_never_answered()
    {
        var belief = Belief.Before([0.5], 1);
        var model = new NoisyOr(0, [1]);

        Assert.Equal(1, belief.EntropyBits, Close);
        Assert.Equal(1, belief.ExpectedBits(model, default), Close);
        Assert.Equal(0.25, belief.ExpectedBits(model, new Telling(0, 0.75)), Close);

        // a symmetric channel that errs in 0.1: 1 - H(0.1) = 0.531004406
        Assert.Equal(0.531004406, belief.ExpectedBits(model, new Telling(0.1, 0)), 1e-8);
    }

    [Fact]
    public void What_a_test_tells_on_average_is_the_fall_of_the_entropy()
    {
        var belief = Belief.Before([0.1, 0.2, 0.05, 0.3], 3);
        var model = new SharedOutcome([0.2, 0.2, 0.6], [[0.8, 0.1, 0.1], [0.1, 0.8, 0.1], null, [0.3, 0.3, 0.4]]);
        var telling = new Telling(0.06, 0);

        var after = Enumerable.Range(0, 3).Select(a => belief.After(model, a, telling)).ToList();

        Assert.Equal(1, after.Sum(a => a.Chance), Close);
        Assert.Equal(belief.EntropyBits - after.Sum(a => a.Chance * a.Belief.EntropyBits), belief.ExpectedBits(model, telling), Close);
    }

    [Fact]
    public void Sets_are_all_there_once()
    {
        var sets = CauseSets.UpTo(6, 3);

        Assert.Equal(1 + 6 + 15 + 20, sets.Count);
        Assert.Equal(sets.Count, sets.Select(s => string.Join(',', s)).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void Closed_cases_move_a_chance_by_their_number()
    {
        Assert.Equal(0.1, BetaCount.Mean(0.1, 20, 0, 0), Close);
        Assert.Equal((0.1 * 20 + 9) / 50, BetaCount.Mean(0.1, 20, 9, 30), Close);
    }

    [Fact]
    public void Chances_that_cannot_be_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new NoisyOr(1.2, []));
        Assert.Throws<ArgumentException>(() => new SharedOutcome([0.5, 0.4], []));
        Assert.Throws<ArgumentOutOfRangeException>(() => Belief.Before([0], 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Belief.Before([0.1], 4));
    }
}
