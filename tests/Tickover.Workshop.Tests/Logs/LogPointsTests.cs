using System.Globalization;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Logs;

namespace Tickover.Workshop.Tests.Logs;

/// <summary>Points of an invented run against what it was made of.</summary>
public sealed class LogPointsTests
{
    private static readonly Car Tern = Sample("tern-2800");
    private static readonly Car Osprey = Sample("osprey-v8");
    private static readonly LogAccount Account = LogPoints.Of(new InventedRun().Make(Tern), Tern);

    [Fact]
    public void The_transport_delay_is_found_within_its_own_band()
    {
        var delay = Account.Delay;

        Assert.True(delay.Found);
        // At 44 kg/h, an idle, and at 200 kg/h, a brisk cruise.
        foreach (var air in new[] { 44 / 3600.0, 200 / 3600.0 })
        {
            Assert.Equal(InventedRun.Fixed + InventedRun.Pipe / air, delay.At(air), 0.2);
        }

        Assert.True(delay.SlowSeconds > delay.FastSeconds + 0.1);
        Assert.InRange(delay.FastSigma, 0.001, 0.3);
    }

    [Fact]
    public void Points_carry_the_mixture_that_was_there_and_its_error()
    {
        var steady = Account.Points.Where(p => p.Regime is not Regime.Overrun).ToArray();

        Assert.True(steady.Length >= 40, $"{steady.Length} points");
        var pulls = steady.Select(p => (p.Lambda - InventedRun.Formula(p.SpeedRpm, p.ThrottleDegrees!.Value)) / p.LambdaSigma).ToArray();
        Assert.True(pulls.Count(p => Math.Abs(p) < 2) >= 0.95 * pulls.Length, string.Join(' ', pulls.Select(p => p.ToString("0.0", CultureInfo.InvariantCulture))));
        Assert.All(steady, p => Assert.InRange(p.LambdaSigma, 0.01, 0.03));
    }

    [Theory]
    [InlineData(Regime.Idle, 1.5)]
    [InlineData(Regime.Progression, 9)]
    [InlineData(Regime.Changeover, 17)]
    [InlineData(Regime.Cruise, 30)]
    [InlineData(Regime.FullLoad, 79)]
    public void Every_regime_driven_is_named(Regime regime, double degrees)
    {
        Assert.Contains(Account.Points, p => p.Regime == regime && Math.Abs(p.ThrottleDegrees!.Value - degrees) < 2);
    }

    [Fact]
    public void Fast_openings_are_windows_of_their_own()
    {
        var openings = Account.TipIns;

        // Each lap opens fast to 25, 17 and 30 or more degrees, and twice fully; slow ones are no tip-ins.
        Assert.InRange(openings.Count, 12, 24);
        Assert.All(openings, w => Assert.True(w.Trace.ThrottleDegrees.Max() > w.Trace.ThrottleDegrees[0] + 5));
        Assert.All(openings, w => Assert.Null(w.Trace.Unusable()));
        Assert.Contains(Account.Stretches, s => s.Regime is Regime.TipIn);
    }

    [Fact]
    public void The_trace_is_short_and_keeps_every_extreme()
    {
        var run = new InventedRun().Make(Tern);
        var trace = Account.Trace;

        Assert.InRange(trace.Seconds.Count, 500, 1500);
        Assert.All(trace.Seconds.Zip(trace.Seconds.Skip(1)), p => Assert.True(p.Second > p.First));
        Assert.All(trace.Lambdas, l => Assert.Equal(trace.Seconds.Count, l.Lambda.Count));
        Assert.Equal(run.SpeedRpm.Where(float.IsFinite).Max(), trace.SpeedRpm.Max()!.Value, 60.0);
        Assert.Equal(Account.Stretches.Where(s => s.Regime is Regime.TipIn).Select(s => Math.Round(s.StartSeconds, 1)), trace.TipInSeconds);
        Assert.All(trace.Stretches.Zip(trace.Stretches.Skip(1)), p => Assert.True(p.Second.StartSeconds >= p.First.EndSeconds - 0.11));
    }

    [Fact]
    public void The_pump_is_judged_by_most_openings_or_the_drive_that_would_show_it_is_named()
    {
        var judged = Account.Pump.Shots.Where(s => s.Verdict is not (TipInVerdict.CannotTell or TipInVerdict.SlowOpening)).ToArray();
        var still = LogPoints.Of(new InventedRun().Make(Tern) with { Throttle = null }, Tern).Pump;

        Assert.Equal(Account.TipIns.Count, Account.Pump.Shots.Count);
        Assert.NotEmpty(judged);
        Assert.NotEmpty(Account.Pump.Advice);
        Assert.Null(still.Verdict);
        Assert.Contains("Without a throttle", still.Words, StringComparison.Ordinal);
        Assert.Contains(still.Advice, a => a.Contains("within half a second", StringComparison.Ordinal));
    }

    [Fact]
    public void Overrun_is_seen_and_makes_no_claim()
    {
        Assert.Contains(Account.Stretches, s => s.Regime is Regime.Overrun);
        Assert.All(Account.Points.Where(p => p.Regime is Regime.Overrun), p => Assert.NotEmpty(p.Doubts));
    }

    [Fact]
    public void Marks_of_the_throttle_are_found_or_told()
    {
        Assert.Equal(3, Account.ClosedMark!.Value, 0.3);
        Assert.Equal(95, Account.WideMark!.Value, 0.3);
        var told = LogPoints.Of(new InventedRun().Make(Tern), Tern, new LogPointSettings { ClosedMark = 2, WideMark = 100 });
        Assert.Equal(2, told.ClosedMark);
        Assert.Equal(100, told.WideMark);
    }

    [Fact]
    public void All_time_is_accounted_for()
    {
        var log = new InventedRun().Make(Tern);
        var steady = Account.Stretches.Where(s => s.Regime is not Regime.TipIn).Sum(s => s.EndSeconds - s.StartSeconds);
        var dropped = Account.Dropped.Where(d => !d.Why.StartsWith("steady", StringComparison.Ordinal)).Sum(d => d.Seconds);

        Assert.Equal(log.Seconds[^1], steady + dropped, 0.5);
    }

    [Fact]
    public void A_cold_engine_makes_no_points_and_the_log_says_so()
    {
        var cold = LogPoints.Of(new InventedRun { Coolant = 320, Laps = 1 }.Make(Tern), Tern);

        Assert.Empty(cold.Points);
        Assert.Contains(cold.Doubts, d => d.Contains("never got warm (at most 47 °C)", StringComparison.Ordinal));
        Assert.Contains(cold.Dropped, d => d.Why is "engine cold");
    }

    [Fact]
    public void One_probe_for_all_barrels_is_said()
    {
        Assert.Contains(Account.Doubts, d => d.StartsWith("One probe saw all barrels", StringComparison.Ordinal));
    }

    [Fact]
    public void Banks_are_kept_apart_and_one_that_differs_everywhere_is_said()
    {
        var account = LogPoints.Of(new InventedRun { Sensors = [(1, 0), (2, 0.07)] }.Make(Osprey), Osprey);

        Assert.Equal([1, 2], account.Points.Select(p => p.Bank!.Value).Distinct().Order());
        Assert.Contains(account.Doubts, d => d.Contains("swap the sensors", StringComparison.Ordinal));
        Assert.DoesNotContain(LogPoints.Of(new InventedRun { Sensors = [(1, 0), (2, 0.01)], Laps = 1 }.Make(Osprey), Osprey).Doubts, d => d.Contains("swap", StringComparison.Ordinal));
    }

    [Fact]
    public void A_leak_that_reads_lean_at_idle_is_named_before_the_jet()
    {
        var leaking = new InventedRun { Lambda = (rpm, degrees) => InventedRun.Formula(rpm, degrees) + (degrees < 3 ? 0.2 : 0) };

        var account = LogPoints.Of(leaking.Make(Tern), Tern);

        Assert.Contains(account.Doubts, d => d.Contains("Look for both before the idle jet", StringComparison.Ordinal));
        Assert.All(account.Points.Where(p => p.Regime is Regime.Idle), p => Assert.NotEmpty(p.Doubts));
        Assert.DoesNotContain(Account.Doubts, d => d.Contains("leak", StringComparison.Ordinal));
    }

    [Fact]
    public void A_supply_that_fades_along_a_pull_is_named()
    {
        var starving = new InventedRun { Lambda = (rpm, degrees) => InventedRun.Formula(rpm, degrees) + (degrees > 60 ? 0.00006 * (rpm - 2500) : 0) };

        Assert.Contains(LogPoints.Of(starving.Make(Tern), Tern).Points, p => p.Doubts.Any(d => d.Contains("the supply", StringComparison.Ordinal)));
        Assert.DoesNotContain(Account.Points, p => p.Doubts.Any(d => d.Contains("the supply", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_sensor_at_its_end_makes_no_point()
    {
        var log = new InventedRun { Noise = 0, Laps = 1 }.Make(Tern);
        var ended = log with { Lambdas = [log.Lambdas[0] with { Lambda = [.. log.Lambdas[0].Lambda.Select(l => Math.Min(l, 1.0f))], LeanLimit = 0.998f }] };

        Assert.Contains(LogPoints.Of(ended, Tern).Dropped, d => d.Why.Contains("at its end", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_throttle_the_pressure_will_do()
    {
        var account = LogPoints.Of(new InventedRun { HasThrottle = false }.Make(Tern), Tern);

        Assert.NotEmpty(account.Points);
        Assert.All(account.Points, p => Assert.Null(p.ThrottleDegrees));
        Assert.Contains(account.Doubts, d => d.Contains("no throttle", StringComparison.Ordinal));
        Assert.Empty(account.TipIns);
    }

    private static Car Sample(string name) => CarDocument.Read(File.ReadAllText(Path.Combine(Repository.Root, "samples", name + ".car.json"))).Car!;
}
