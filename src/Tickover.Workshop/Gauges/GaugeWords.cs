using System.Globalization;
using Tickover.Physics.Sending;

namespace Tickover.Workshop.Gauges;

/// <summary>Why the gauge lies, in words: three questions kept apart, and what helps.</summary>
internal static class GaugeWords
{
    private const double Litre = 1e-3;
    private const double Telling = 0.5;                    // L, what a driver would notice

    public static IReadOnlyList<GaugeAdvice> Of(
        GaugeStory story, TwoTanks tanks, IReadOnlyList<SendingMoment> course, double[] needle, IReadOnlyList<GaugeRemedy> remedies) =>
    [
        new GaugeAdvice(Headline(course, needle), Reason(tanks, course)),
        new GaugeAdvice("Is the fuel where we think it is?", Hydraulics(tanks, course, remedies[0])),
        new GaugeAdvice("Does the sender follow the level?", Sender(tanks, course)),
        new GaugeAdvice("Does the needle show the sender?", Needle(tanks)),
        new GaugeAdvice("What helps on this road", Helps(remedies)),
        new GaugeAdvice("Before you trust it", "All this follows from the description of the car: check it by filling in measured steps and waiting for the tanks to level. Do ohms with the battery isolated and the tank closed. The time a heated-strip needle lags and the damping of the fuel are assumptions until measured."),
    ];

    private static string Headline(IReadOnlyList<SendingMoment> course, double[] needle)
    {
        var worst = Enumerable.Range(0, course.Count).MaxBy(k => Math.Abs(Off(course, needle, k)));
        var (off, end) = (Off(course, needle, worst), Off(course, needle, course.Count - 1));
        return Math.Abs(off) < Telling
            ? "On this road the needle tells the truth within half a litre."
            : In($"It reads up to {Math.Abs(off):0.#} L {(off < 0 ? "short" : "too much")}, {course[worst].Seconds:0} s into the drive. {(Math.Abs(end) < 0.1 ? "At the end it is right again." : In($"At the end it is still {Math.Abs(end):0.#} L out."))}");
    }

    private static double Off(IReadOnlyList<SendingMoment> course, double[] needle, int k) => needle[k] - course[k].TotalCubicMetres / Litre;

    private static string Reason(TwoTanks tanks, IReadOnlyList<SendingMoment> course)
    {
        var moved = course.Max(m => Math.Abs(m.LeftCubicMetres - course[0].LeftCubicMetres)) / Litre;
        var hardest = course.Max(m => Math.Abs(m.Road.LeftMetresPerSecondSquared)) / RoadSample.Gravity;
        var burnt = (course[0].TotalCubicMetres - course[^1].TotalCubicMetres) / Litre;
        var (away, side) = tanks.Sender.Place.Side is TankSide.Left ? ("left", "left") : ("right", "right");
        return In($"A bend to the {away} sends fuel away from the float in the {side} tank, one the other way sends it there. Up to {hardest:0.00} g to the side; {moved:0.#} L crossed at most, while the whole drive burnt {burnt:0.#} L. The needle follows {tanks.Gauge.LagSeconds + tanks.Gauge.AveragingSeconds:0.#} s late.");
    }

    private static string Hydraulics(TwoTanks tanks, IReadOnlyList<SendingMoment> course, GaugeRemedy now)
    {
        var vents = tanks.Vents is TankVents.Free or TankVents.Shared ? "" : " A vent is blocked: trapped air holds the fuel where it is.";
        var level = now.MinutesToLevel is { } minutes ? In($"After a fill through the left filler it needs {minutes:0.#} min to come within 10 mm of level.") : "After a fill the tanks do not level within an hour.";
        var most = course.Max(m => Math.Abs(m.FlowToRight)) / Litre * 60;
        var dry = now.DrySeconds > 0 ? In($" The pick-up draws air for {now.DrySeconds:0.#} s on this road.") : "";
        return In($"Not after a bend: the {tanks.Pipe.BoreMetres * 1e3:0.#} mm pipe passes up to {most:0.#} L/min here.") + " " + level + vents + dry;
    }

    private static string Sender(TwoTanks tanks, IReadOnlyList<SendingMoment> course)
    {
        var (low, high) = (course.Min(m => m.SenderLevelMetres) * 1e3, course.Max(m => m.SenderLevelMetres) * 1e3);
        var place = tanks.Sender.Place;
        var outboard = Math.Abs(place.LeftMetres) > 0.02
            ? In($" It sits {Math.Abs(place.LeftMetres) * 1e3:0} mm to the {(place.LeftMetres > 0 ? "left" : "right")} of the tank's middle, so the tilt of the surface adds to it.")
            : "";
        return In($"It feels the level where it sits: {low:0} to {high:0} mm on this road.") + outboard + (tanks.Sender.Arm.Reversed ? " Its arm is in the wrong way round." : "");
    }

    private static string Needle(TwoTanks tanks)
    {
        var c = tanks.Gauge.Circuit;
        if (c.Fault is not WireFault.None)
        {
            return c.Fault is WireFault.Open ? "No: the wire is broken, so it shows what no current means." : "No: the wire is rubbed through to earth, so it shows what no resistance means.";
        }

        if (c.MadeFor is { } family && family != c.Sender)
        {
            return In($"No: the gauge was made for {family.EmptyOhms:0} to {family.FullOhms:0} Ω, the sender has {c.Sender.EmptyOhms:0} to {c.Sender.FullOhms:0} Ω. They can never agree.");
        }

        var middle = c.Sender.OhmsAt(0.5);
        var off = c.NeedleAt(middle) - (c with { SeriesOhms = 0, Volts = c.MadeForVolts }).NeedleAt(middle);
        return Math.Abs(off) < 0.005 ? "Yes, once it has had time." : In($"Not quite: {Math.Abs(off) * 100:0} % of the scale {(off < 0 ? "low" : "high")} with the float at half, from {c.SeriesOhms:0.#} Ω in the earth or {c.Volts:0.#} V on the gauge.");
    }

    private static string Helps(IReadOnlyList<GaugeRemedy> remedies)
    {
        var (found, best) = (remedies[0], remedies.Skip(1).MinBy(r => r.RmsLitres)!);
        var cost = best.MinutesToLevel is { } minutes && found.MinutesToLevel is { } before && minutes > 1.2 * before
            ? In($" It costs time after a fill: {minutes:0.#} min to level instead of {before:0.#}.")
            : best.MinutesToLevel is null ? " But then the tanks do not level within an hour of a fill through the left filler." : "";
        return best.RmsLitres < 0.9 * found.RmsLitres
            ? In($"Most: {Lower(best.Name)}, from {found.RmsLitres:0.0} to {best.RmsLitres:0.0} L of error on average.") + cost
            : "None of the remedies tried makes it much better on this road.";
    }

    private static string Lower(string name) => char.ToLowerInvariant(name[0]) + name[1..];

    private static string In(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
