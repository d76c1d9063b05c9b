using System.Globalization;

namespace Tickover.Workshop.Logs;

/// <summary>Weighs lean against rich, and says what to do about it.</summary>
internal static class TipInWeighing
{
    internal static TipInJudgement Weigh(TipInTrace trace, TipInWindow window, TipInEngine engine)
    {
        var (lean, rich) = (window.Largest(1, engine), window.Largest(-1, engine));
        if (lean is not null && rich is not null && window.IsMild(lean) && -rich.Grams >= TipInLimits.Balanced * lean.Grams)
        {
            lean = null;
        }

        var verdict = Verdict(lean, rich, HidesHanging(trace, window));
        var judged = new TipInJudgement
        {
            Verdict = verdict,
            Words = Words(verdict, lean, rich, window),
            Advice = TipInAdvice.Of(verdict, lean, rich, engine),
            OpeningSeconds = trace.Seconds[window.Start],
            LambdaBefore = window.LevelBefore,
            LambdaSettled = window.LevelAfter,
            Lean = lean,
            Rich = rich,
            DeficitBandGrams = Band(lean, window, engine),
            Open = Unsettled(trace, lean, engine),
        };
        return engine.ShotPerBarrel is { } shot ? Weighed(judged, shot, window, engine) : judged;
    }

    // Without the delay, λ that stays where it was before it falls is either gas on its way or a shot a little small.
    private static bool HidesHanging(TipInTrace trace, TipInWindow window) =>
        trace.DelaySeconds is null && window.LevelBefore > window.LevelAfter + window.Off;

    private static TipInVerdict Verdict(TipInExcursion? lean, TipInExcursion? rich, bool hidden)
    {
        if (lean is not null)
        {
            var both = rich is not null && Math.Abs(rich.Grams) >= TipInLimits.Sequence * lean.Grams;
            return !both ? TipInVerdict.TooSmall
                : lean.StartSeconds < rich!.StartSeconds ? TipInVerdict.Late
                : TipInVerdict.SpentTooSoon;
        }

        if (rich is null)
        {
            return hidden ? TipInVerdict.CannotTell : TipInVerdict.Right;
        }

        return rich.Seconds > TipInLimits.RichSeconds + TipInLimits.SensorSeconds || rich.Peak < TipInLimits.Richest - TipInLimits.LambdaBand ? TipInVerdict.TooLarge
            : rich.Seconds < TipInLimits.RichSeconds - TipInLimits.SensorSeconds ? TipInVerdict.Right
            : TipInVerdict.CannotTell;
    }

    private static string Words(TipInVerdict verdict, TipInExcursion? lean, TipInExcursion? rich, TipInWindow window)
    {
        var said = verdict switch
        {
            TipInVerdict.Right => "The shot is right: no lean spike",
            TipInVerdict.TooSmall => "The shot is too small",
            TipInVerdict.TooLarge => "The shot is too large",
            TipInVerdict.Late => "The shot comes late",
            TipInVerdict.SpentTooSoon => "The shot is spent too soon",
            _ when rich is null => "Straight from one level to the other: the sensor's delay, or a shot a little small that holds the old mixture",
            _ => "A rich dip of about a second: at the limit",
        };
        var leanWords = lean is null ? "" : Say($"lean to λ {lean.Peak:0.00} for {lean.Seconds:0.0} s");
        var richWords = rich is null ? "" : Say($"rich to λ {rich.Peak:0.00} for {rich.Seconds:0.0} s");
        var order = lean is not null && rich is not null && rich.StartSeconds < lean.StartSeconds ? new[] { richWords, leanWords } : [leanWords, richWords];
        var shape = string.Join(", then ", order.Where(words => words.Length > 0));
        return Say($"{said}{(shape.Length > 0 ? ": " + shape : "")}; λ {window.LevelBefore:0.00} before, {window.LevelAfter:0.00} settled.");
    }

    private static double Band(TipInExcursion? lean, TipInWindow window, TipInEngine engine)
    {
        if (lean is null)
        {
            return 0;
        }

        var ofFilling = lean.Grams * engine.FillingBand / engine.Filling;
        var fuel = engine.Air(window.SpeedAfter, engine.Filling) / engine.StoichiometricRatio / window.LevelAfter * 1000;
        var ofSensor = fuel * TipInLimits.LambdaBand / window.LevelAfter * lean.Seconds;
        return Math.Sqrt(ofFilling * ofFilling + ofSensor * ofSensor);
    }

    /// <summary>With a measured shot: the shot that would cancel what is left, and what the walls took.</summary>
    private static TipInJudgement Weighed(TipInJudgement judged, double shot, TipInWindow window, TipInEngine engine)
    {
        var gramsPerCubicCentimetre = engine.FuelDensity / 1000;
        var missing = judged.DeficitGrams + (judged.Rich?.Grams ?? 0);
        var rise = (engine.Air(window.SpeedAfter, engine.Filling) / window.LevelAfter - engine.Air(window.SpeedAfter, engine.FillingBefore) / window.LevelBefore)
            / engine.StoichiometricRatio * 1000;
        var owed = shot * engine.Barrels * gramsPerCubicCentimetre + missing;
        var film = rise > 0 ? owed / rise : (double?)null;
        var beyond = film is < TipInLimits.LeastOwed or > TipInLimits.MostOwed;
        return judged with
        {
            NeededShot = Math.Max(0, owed / engine.Barrels / gramsPerCubicCentimetre),
            FilmSeconds = film,
            Open = beyond
                ? [.. judged.Open, Say($"The walls would have to hold {film:0.00} s of the rise; warm ones hold 0.02 to 0.8. The shot, its measure or the filling is not what was given.")]
                : judged.Open,
        };
    }

    private static List<string> Unsettled(TipInTrace trace, TipInExcursion? lean, TipInEngine engine)
    {
        var open = new List<string>();
        if (trace.DelaySeconds is null)
        {
            open.Add("When the shot begins: the exhaust's way to the sensor takes 0.3 to 2 s, and only the order of lean and rich is sure.");
        }

        if (engine.Barrels > 1)
        {
            open.Add("Which barrel: one dry nozzle among several looks like a small shot from all. Look for every jet of fuel, engine stopped.");
        }

        if (lean is not null)
        {
            open.Add("Whether it fired: a missed charge reads lean as well.");
        }

        if (lean?.Peak >= TipInLimits.Saturated)
        {
            open.Add("How lean: the sensor ends there, so the deficit is the least it can be.");
        }

        return open;
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
