using System.Globalization;
using Tickover.Physics.Sending;

namespace Tickover.Workshop.Gauges;

/// <summary>Why the gauge lies, in words.</summary>
internal static class GaugeWords
{
    private const double Litres = 1000;

    public static string Headline(GaugeFilm film)
    {
        var worst = film.Worst;
        var off = film.Needle[worst] - film.Truth[worst];
        var end = film.Needle[^1] - film.Truth[^1];
        return string.Create(CultureInfo.InvariantCulture, $"At {worst * film.Moments.EverySeconds:0} s the needle says {film.Needle[worst]:0.0} L and {film.Truth[worst]:0.0} L are in the tanks: {Math.Abs(off):0.0} L {Way(off)}. At the end it is {Math.Abs(end):0.0} L {Way(end)}.");
    }

    public static IReadOnlyList<(string Question, string Answer)> Answers(GaugeSetup setup, GaugeFilm film, RemedyRow found) =>
    [
        ("Is the fuel where we think?", Fuel(setup, film, found)),
        ("Does the sender follow the level?", Sender(setup)),
        ("Does the needle show the sender?", Needle(setup)),
    ];

    private static string Fuel(GaugeSetup setup, GaugeFilm film, RemedyRow found)
    {
        var m = film.Moments;
        var most = Enumerable.Range(0, m.Count).Max(i => Math.Abs(m.LeftVolumes[i] - m.LeftVolumes[0])) * Litres;
        var way = string.Create(CultureInfo.InvariantCulture, $"On this road up to {most:0.0} L cross through the {1000 * setup.Pair.Pipe.BoreMetres:0.#} mm pipe. ");
        var levelled = found.LevelMinutes is { } minutes
            ? string.Create(CultureInfo.InvariantCulture, $"After a fill into one tank they need {minutes:0.0} min to level.")
            : "After a fill into one tank they do not level within two hours: look for a shut vent, a flap or a blocked pipe.";
        var blocked = setup.Pair.Left.Vent == TankVent.Blocked || setup.Pair.Right.Vent == TankVent.Blocked ? " A shut vent holds fuel where it is." : "";
        return way + levelled + blocked + (m.Covered.Contains(false) ? " The pick-up comes out of the fuel on this road: the engine would cough." : "");
    }

    private static string Sender(GaugeSetup setup)
    {
        var place = setup.Fitting.First.Place.LeftMetres;
        var tilt = string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(place) * 300:0} mm");
        var where = Math.Abs(place) < 0.005
            ? "It sits in the middle of its tank, so tilt alone hardly moves it; what moves it is the fuel that crosses."
            : $"On level ground yes. It sits {1000 * Math.Abs(place):0} mm to the {(place > 0 ? "left" : "right")} of its tank's middle, so a bend of 0.3 g moves its level by {tilt} at once, before any fuel has crossed.";
        return setup.Fitting.First.Arm.Reversed ? "No: it is fitted the wrong way round. " + where : where;
    }

    private static string Needle(GaugeSetup setup)
    {
        var gauge = setup.Fitting.Gauge;
        var family = setup.Fitting.First.Arm.Family;
        var half = gauge.Shown(gauge.Signal(family.At(0.5))) - 0.5;
        var lag = string.Create(CultureInfo.InvariantCulture, $"It follows with {gauge.TimeConstantSeconds:0.#} s of delay.");
        return gauge.Fault switch
        {
            WiringFault.Open => "No: the wire is open. Substitute a known resistance at the sender plug, battery isolated and tank closed.",
            WiringFault.Short => "No: the wire touches the body. Take it off the sender: the needle must go over to the other end.",
            _ when Math.Abs(half) < 0.01 => "Yes. " + lag,
            _ => string.Create(CultureInfo.InvariantCulture, $"Not quite: at half travel it shows {Math.Abs(half) * 100:0} % of the scale {(half > 0 ? "high" : "low")}. Look at earth, stabiliser and whether sender and gauge are of one family. {lag}"),
        };
    }

    private static string Way(double off) => off < 0 ? "short" : "too much";
}
