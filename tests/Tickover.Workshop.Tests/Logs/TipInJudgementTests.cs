using Tickover.Workshop.Logs;

namespace Tickover.Workshop.Tests.Logs;

public sealed class TipInJudgementTests
{
    private static readonly TipInEngine Engine = new() { SweptLitres = 2.8, Barrels = 6 };

    private static TipInJudgement Judge(Stab stab, TipInEngine? engine = null) => TipInJudgement.Of(stab.ToTipInTrace(), engine ?? Engine);

    private static TipInJudgement JudgeWithDelay(Stab stab, TipInEngine? engine = null) =>
        TipInJudgement.Of(stab.ToTipInTrace() with { DelaySeconds = stab.Transport }, engine ?? Engine);

    [Fact]
    public void Without_a_shot_the_spike_is_lean_and_as_heavy_as_the_walls_took()
    {
        var stab = new Stab();

        var judged = Judge(stab);

        Assert.Equal(TipInVerdict.TooSmall, judged.Verdict);
        Assert.Null(judged.Rich);
        Assert.InRange(judged.DeficitGrams / stab.OwedGrams, 0.85, 1.15); // a lagging sensor rounds the spike, which weighs some 5 % more
        Assert.InRange(stab.OwedGrams, judged.DeficitGrams - judged.DeficitBandGrams, judged.DeficitGrams + judged.DeficitBandGrams);
        Assert.Equal(2, judged.OpeningSeconds!.Value, 0.06);
        Assert.Equal(0.88, judged.LambdaSettled!.Value, 0.01);
    }

    [Theory]
    [InlineData(0.0, 0.4, TipInVerdict.TooSmall)]
    [InlineData(0.3, 0.4, TipInVerdict.TooSmall)]
    [InlineData(1.0, 0.7, TipInVerdict.Right)]
    [InlineData(3.5, 1.2, TipInVerdict.TooLarge)]
    [InlineData(3.0, 2.0, TipInVerdict.TooLarge)]
    public void Shot_by_its_size(double ofOwed, double seconds, TipInVerdict verdict)
    {
        var stab = new Stab { FilmSeconds = 0.6 };

        var judged = JudgeWithDelay(stab with { ShotGrams = ofOwed * stab.OwedGrams, ShotSeconds = seconds });

        Assert.True(verdict == judged.Verdict, judged.Words);
    }

    [Fact]
    public void Shot_that_holds_the_old_mixture_is_told_from_delay_only_where_the_delay_is_known()
    {
        var stab = new Stab { FilmSeconds = 0.6 };
        var small = stab with { ShotGrams = 0.3 * stab.OwedGrams };

        Assert.Equal(TipInVerdict.CannotTell, Judge(small).Verdict);
        Assert.Contains("delay", Judge(small).Advice[0], StringComparison.Ordinal);
        Assert.Equal(TipInVerdict.TooSmall, JudgeWithDelay(small).Verdict);
    }

    [Theory]
    [InlineData(0.4)]
    [InlineData(0.7)]
    public void Right_amount_that_comes_behind_time_is_late(double delay)
    {
        var stab = new Stab { FilmSeconds = 0.4 };

        var judged = Judge(stab with { ShotGrams = 1.2 * stab.OwedGrams, ShotDelay = delay, ShotSeconds = 0.3 });

        Assert.True(judged.Verdict == TipInVerdict.Late, judged.Words);
        Assert.True(judged.Lean!.StartSeconds < judged.Rich!.StartSeconds);
        Assert.Contains("linkage", judged.Advice[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Right_amount_that_is_gone_at_once_is_spent_too_soon()
    {
        var stab = new Stab { FilmSeconds = 1.2 };

        var judged = Judge(stab with { ShotGrams = 0.6 * stab.OwedGrams, ShotSeconds = 0.35 });

        Assert.True(judged.Verdict == TipInVerdict.SpentTooSoon, judged.Words);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Verdicts_hold_with_other_noise(int seed)
    {
        var stab = new Stab { FilmSeconds = 0.6, Seed = seed, Noise = 0.006 };

        Assert.Equal(TipInVerdict.TooSmall, Judge(stab).Verdict);
        Assert.Equal(TipInVerdict.Right, Judge(stab with { ShotGrams = stab.OwedGrams, ShotSeconds = 0.7 }).Verdict);
        Assert.Equal(TipInVerdict.TooLarge, Judge(stab with { ShotGrams = 3.5 * stab.OwedGrams, ShotSeconds = 1.5 }).Verdict);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.8)]
    [InlineData(1.5)]
    public void Sensors_delay_does_not_change_the_verdict(double transport)
    {
        var judged = Judge(new Stab { Transport = transport });

        Assert.Equal(TipInVerdict.TooSmall, judged.Verdict);
        Assert.InRange(judged.DeficitGrams / new Stab().OwedGrams, 0.85, 1.15);
    }

    [Fact]
    public void Measured_shot_gives_the_shot_that_is_needed_and_the_walls_share()
    {
        var stab = new Stab { FilmSeconds = 0.6 };
        var half = 0.5 * stab.OwedGrams;

        var judged = JudgeWithDelay(stab with { ShotGrams = half, ShotSeconds = 0.6 }, Engine with { ShotPerBarrel = half / 0.745 / 6 });

        Assert.Equal(TipInVerdict.TooSmall, judged.Verdict);
        Assert.InRange(judged.NeededShot!.Value * 6 * 0.745 / stab.OwedGrams, 0.85, 1.1);
        Assert.InRange(judged.FilmSeconds!.Value / (0.3 * 0.6), 0.8, 1.2);
    }

    [Fact]
    public void Shot_that_no_wall_could_hold_is_doubted()
    {
        var judged = Judge(new Stab(), Engine with { ShotPerBarrel = 3 });

        Assert.Contains(judged.Open, words => words.Contains("walls", StringComparison.Ordinal));
    }

    [Fact]
    public void Short_spike_wants_rate_and_a_long_one_volume()
    {
        var quick = Judge(new Stab { FilmSeconds = 0.2, Rate = 50 }, Engine with { PumpJet = 40 });
        var slow = Judge(new Stab { FilmSeconds = 1.5 });

        Assert.Contains(quick.Advice, words => words.Contains("from 40 to 45: +27 % in rate, none in volume", StringComparison.Ordinal));
        Assert.Contains(slow.Advice, words => words.Contains("longer stroke", StringComparison.Ordinal));
        Assert.DoesNotContain(slow.Advice, words => words.Contains("in rate", StringComparison.Ordinal));
    }

    [Fact]
    public void Slow_opening_does_not_ask_the_pump()
    {
        var judged = Judge(new Stab { OpeningSeconds = 2 });

        Assert.Equal(TipInVerdict.SlowOpening, judged.Verdict);
        Assert.Contains("progression", judged.Advice[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Several_barrels_on_one_probe_leave_open_which()
    {
        Assert.Contains(Judge(new Stab()).Open, words => words.Contains("Which barrel", StringComparison.Ordinal));
        Assert.DoesNotContain(Judge(new Stab(), Engine with { Barrels = 1 }).Open, words => words.Contains("Which barrel", StringComparison.Ordinal));
    }

    [Fact]
    public void Saturated_sensor_makes_the_deficit_a_least()
    {
        var trace = new Stab { Settles = 0.7, FilmSeconds = 1 }.ToTipInTrace();

        var judged = TipInJudgement.Of(trace with { Lambda = [.. trace.Lambda.Select(lambda => Math.Min(lambda, 1.36))] }, Engine);

        Assert.Equal(TipInVerdict.TooSmall, judged.Verdict);
        Assert.Contains(judged.Open, words => words.Contains("least it can be", StringComparison.Ordinal));
    }

    public static TheoryData<string, Func<TipInTrace, TipInTrace>> Unusable => new()
    {
        { "same number of rows", trace => trace with { SpeedRpm = [1] } },
        { "too few", trace => First(trace, 10) },
        { "holds no number", trace => trace with { Lambda = [.. trace.Lambda.Skip(1), double.NaN] } },
        { "above zero", trace => trace with { Lambda = [.. trace.Lambda.Skip(1), 0] } },
        { "does not rise", trace => trace with { Seconds = [.. trace.Seconds.Skip(1), 0] } },
        { "No opening", trace => trace with { ThrottleDegrees = [.. trace.ThrottleDegrees.Select(_ => 12.0)] } },
        { "ends too soon", trace => First(trace, 80) },
        { "let go", trace => trace with { ThrottleDegrees = [.. trace.ThrottleDegrees.Select((degrees, i) => i > 100 ? 10 : degrees)] } },
        { "begins too late", trace => Last(trace, 125) },
        { "wanders", trace => trace with { Lambda = [.. trace.Lambda.Select((lambda, i) => lambda + 0.05 * (i % 3 - 1))] } },
    };

    [Theory]
    [MemberData(nameof(Unusable), DisableDiscoveryEnumeration = true)]
    public void Trace_that_cannot_decide_says_why(string words, Func<TipInTrace, TipInTrace> change)
    {
        var judged = TipInJudgement.Of(change(new Stab().ToTipInTrace()), Engine);

        Assert.Equal(TipInVerdict.CannotTell, judged.Verdict);
        Assert.Contains(words, judged.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_too_far_apart_are_told() =>
        Assert.Contains("Log ten times a second", Judge(new Stab { Rate = 5 }).Words, StringComparison.Ordinal);

    [Fact]
    public void Engine_that_cannot_be_is_refused() =>
        Assert.Throws<ArgumentException>(() => Judge(new Stab(), Engine with { SweptLitres = 0 }));

    private static TipInTrace First(TipInTrace trace, int rows) => Part(trace, list => [.. list.Take(rows)]);

    private static TipInTrace Last(TipInTrace trace, int rows) => Part(trace, list => [.. list.TakeLast(rows)]);

    private static TipInTrace Part(TipInTrace trace, Func<IReadOnlyList<double>, double[]> part) => new()
    {
        Seconds = part(trace.Seconds),
        Lambda = part(trace.Lambda),
        ThrottleDegrees = part(trace.ThrottleDegrees),
        SpeedRpm = part(trace.SpeedRpm),
    };
}
