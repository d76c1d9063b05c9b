using System.Globalization;
using Tickover.Physics.Balancing;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising.Mixture;

/// <summary>Best-lean method (reference, 2.9): lean until it falters, rich until it rises no more, then to just before the fall, from as few trials as tell.</summary>
internal static class BestLean
{
    private const double Trial = 0.25;                      // turns
    private const double Known = 0.11;                      // turns: the peak to an eighth
    private const double LeanOfPeak = 0.125;                // turns: just before the fall
    private const double Furthest = 1.5;                    // turns from where it was found
    private const double NothingBelow = 15;                 // rpm over the span of the trials
    private const double WideEnough = 0.7;                  // turns

    /// <summary>What to do with a screw.</summary>
    /// <param name="screw">The screw.</param>
    /// <param name="history">What was turned and read of it.</param>
    /// <returns>The advice.</returns>
    public static ScrewAdvice Of(Adjuster screw, ScrewHistory history)
    {
        if (!history.IsRead)
        {
            return new(Read: true, 0, history.Turns == 0 ? "Let it settle and note the speed before this screw is turned." : "Let it settle and note the speed.");
        }

        var (low, high) = (history.Readings.Min(r => r.Position), history.Readings.Max(r => r.Position));
        var fit = new SpeedPeak().Fit([.. history.Readings.Select(r => (r.Position, r.Value))]);
        var spread = history.Readings.Max(r => r.Value) - history.Readings.Min(r => r.Value);
        if (high - low >= WideEnough && spread < NothingBelow)
        {
            return Nothing(screw, history, high - low);
        }

        if (history.Readings.Select(r => r.Position).Distinct().Count() < 3 || (fit.Deviation > Known && high - low < 2 * Furthest))
        {
            return Try(screw, history, fit, (low, high));
        }

        var aim = Math.Clamp(fit.Turns - LeanOfPeak, -Furthest, Furthest);
        var turns = ScrewAdvice.InSteps(screw, aim - history.Position);
        var settled = history.Turns > 2 && Math.Abs(aim - history.Position) <= LeanOfPeak;
        return settled || turns == 0
            ? ScrewAdvice.Done
            : new(Read: false, turns, Line($"Fastest at {fit.Rpm:0} rpm, {Place(fit.Turns)} ±{1.645 * fit.Deviation:0.00} turn; this is an eighth to the lean of it, just before the fall. Expect {fit.At(history.Position + turns):0} rpm."));
    }

    private static ScrewAdvice Try(Adjuster screw, ScrewHistory history, SpeedPeakFit fit, (double Low, double High) tried)
    {
        // leaner first, then richer; then on, to the side where the peak seems to lie
        var next = tried.Low > -Trial / 2 ? -Trial : tried.High < Trial / 2 ? Trial : fit.Turns > (tried.Low + tried.High) / 2 ? tried.High + Trial : tried.Low - Trial;
        var turns = ScrewAdvice.InSteps(screw, Math.Clamp(next, -Furthest, Furthest) - history.Position);
        return turns == 0
            ? ScrewAdvice.Done
            : new(Read: false, turns, next < 0 && history.Turns == 0 ? "Until this cylinder falters, by quarters: where it falls off is the lean end." : "Where the speed rises no more is the rich end. Three places at least show where the peak lies.");
    }

    private static ScrewAdvice Nothing(Adjuster screw, ScrewHistory history, double span)
    {
        var remark = Line($"{screw.Where}, {screw.Thing}: {span:0.##} turns changed the speed by less than {NothingBelow} rpm. Set it by gas or by cutting that cylinder's spark; or idle is fed from elsewhere: plates too far open, a starter leaking, a float chamber flooding.");
        var back = ScrewAdvice.InSteps(screw, -history.Position);
        return back == 0 ? ScrewAdvice.Done with { Remark = remark } : new(Read: false, back, "It does nothing that can be read: back to where it was found.", remark);
    }

    private static string Place(double turns) => turns switch
    {
        > 0.06 => Line($"{turns:0.00} turn richer than found,"),
        < -0.06 => Line($"{-turns:0.00} turn leaner than found,"),
        _ => "where it was found,",
    };

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
