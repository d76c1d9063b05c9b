using System.Globalization;

namespace Tickover.Workshop.Logs;

/// <summary>What to do about a shot; common practice of the trade.</summary>
internal static class TipInAdvice
{
    private const double JetStep = 5; // 1/100 mm
    private const double UsualJet = 35;

    private const string LookFirst = "Look at the nozzles first, engine stopped: every one must give a firm jet the moment the throttle moves.";
    private const string OneChange = "One change, then the same opening again from the same speed.";

    internal static IReadOnlyList<string> Of(TipInVerdict verdict, TipInExcursion? lean, TipInExcursion? rich, TipInEngine engine) => verdict switch
    {
        TipInVerdict.TooSmall when lean!.Seconds <= TipInLimits.RateSeconds =>
            [LookFirst, $"The spike is short: the shot must come faster. {Larger(engine)} Or the next smaller back-bleed.", OneChange],
        TipInVerdict.TooSmall =>
            [LookFirst, "The spike is long: there must be more of it. The next smaller back-bleed, or a longer stroke; a larger pump jet alone gives the same fuel sooner.", OneChange],
        TipInVerdict.TooLarge =>
            ["See that the outlet ball holds: a nozzle that drips at a steady 3,000 rpm is rich everywhere.", "The next larger back-bleed, or a shorter stroke; a smaller pump jet alone gives the same fuel later.", OneChange],
        TipInVerdict.Late =>
            ["Take the slack out of the pump's linkage, and see that inlet and outlet ball seal and the float level is right. Change no pump jet before that.", OneChange],
        TipInVerdict.SpentTooSoon =>
            [$"The fuel comes too fast and ends too soon. {Smaller(engine)} If it is lean still at the end, a longer stroke.", OneChange],
        TipInVerdict.Right => ["Leave the pump alone."],
        _ when rich is null => ["Find the sensor's delay from the whole log and judge again, or open from a mixture as rich as the settled one."],
        _ => ["Repeat the opening from the same speed; two of three decide."],
    };

    private static string Larger(TipInEngine engine) => Jet(engine, JetStep, "larger");

    private static string Smaller(TipInEngine engine) => Jet(engine, -JetStep, "smaller");

    private static string Jet(TipInEngine engine, double step, string word)
    {
        var from = engine.PumpJet ?? UsualJet;
        var rate = Math.Pow((from + step) / from, 2) - 1;
        var example = engine.PumpJet is null ? "such as" : "from";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"A pump jet one step {word}, {example} {from:0} to {from + step:0}: {rate * 100:+0;-0} % in rate, none in volume.");
    }
}
