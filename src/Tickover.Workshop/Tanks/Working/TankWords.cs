using System.Globalization;
using Tickover.Physics.Tanks;

namespace Tickover.Workshop.Tanks.Working;

/// <summary>What tanks and fill come to, in words.</summary>
internal static class TankWords
{
    public static IReadOnlyList<TankAdvice> Of(TankAnalysis a)
    {
        var advice = new List<TankAdvice>
        {
            new("Open tanks", "Petrol vapour lies in and round an open tank and in pits and drains. Put the tablet and the telephone down outside the vapour zone, battery off, no ignition source near; dip, write on paper, and enter the figures afterwards. A tank called empty still holds vapour. Local codes and licensed practice come first.", true),
        };
        if (a.UnusableLitres is { } unusable)
        {
            var worst = a.Stances.Where(s => s.UnusableLitres is not null).MaxBy(s => s.UnusableLitres);
            var more = worst?.UnusableLitres > unusable
                ? FormattableString.Invariant($" Worst of the stances looked at: {worst.Stance.Name}, {worst.UnusableLitres:0.0} l.")
                : string.Empty;
            advice.Add(new("Fuel out of reach", FormattableString.Invariant($"With the car level {unusable:0.0} of {a.Set.CapacityLitres:0} l stay in when the pick-up draws air.{more} By common practice the needle should stand on E with 5 to 8 l left above that.")));
        }

        if (a.Set.Tanks.Count > 1)
        {
            advice.Add(new("Linked tanks", "The table holds for tanks that have levelled. After a fill through one side that takes minutes; with a blocked vent or an air lock it never happens. Wait, dip both, and read only when they agree within 10 mm."));
        }

        if (a.Fill is { } fill)
        {
            advice.Add(Fill(fill));
        }

        return advice;
    }

    private static TankAdvice Fill(FillFit fill)
    {
        var misread = fill.Lines.Select((l, i) => (l, i)).Where(l => l.l.StandsOut).Select(l => (l.i + 1).ToString(CultureInfo.InvariantCulture)).ToArray();
        var steps = misread.Length == 0 ? string.Empty : $" Step {string.Join(" and ", misread)} does not fit the others: read it again.";
        return fill.Verdict switch
        {
            FillVerdict.Agree => new("Fill and shape agree", FormattableString.Invariant($"The measured fill and the drawn shape agree (dips {fill.Misfit:0.0} reading errors apart on average). Either table will do.{steps}")),
            FillVerdict.AgreeSetRight => new("Fill and shape agree once set right", $"They agree if {string.Join(" and ", fill.Unknowns.Where(u => u.Unusual).Select(Unknown))}. Look whether that can be; the table set right is the one to keep.{steps}"),
            _ => new("Fill and shape differ", FormattableString.Invariant($"No scale, zero, slope or fuel left makes them agree (dips {fill.Misfit:0.0} reading errors apart). Keep the table of the fill; draw the tank again: a hump, a baffle or a dent may be missing.{steps}")),
        };
    }

    public static string Unknown(FillUnknown u)
    {
        const double hundred = 100;
        var (value, deviation) = (u.Value, u.Deviation);
        return u.Kind switch
        {
            FillUnknownKind.Scale => FormattableString.Invariant($"the tank holds {Math.Abs(value) * hundred:0.0} % {(value > 0 ? "more" : "less")} than drawn, give or take {deviation * hundred:0.0} %"),
            FillUnknownKind.Left => value > 0
                ? FormattableString.Invariant($"{TankUnits.Litres(value):0.0} l were in at the start, give or take {TankUnits.Litres(deviation):0.0} l")
                : FormattableString.Invariant($"{-TankUnits.Litres(value):0.0} l of what was poured never reached the tank, give or take {TankUnits.Litres(deviation):0.0} l"),
            FillUnknownKind.Zero => FormattableString.Invariant($"the stick reads {Math.Abs(TankUnits.Millimetres(value)):0.0} mm too {(value > 0 ? "much" : "little")}, give or take {TankUnits.Millimetres(deviation):0.0} mm"),
            FillUnknownKind.NoseUp => FormattableString.Invariant($"the nose stood {Math.Abs(double.RadiansToDegrees(value)):0.0}° {(value > 0 ? "up" : "down")}, give or take {double.RadiansToDegrees(deviation):0.0}°"),
            _ => FormattableString.Invariant($"the left side stood {Math.Abs(double.RadiansToDegrees(value)):0.0}° {(value > 0 ? "up" : "down")}, give or take {double.RadiansToDegrees(deviation):0.0}°"),
        };
    }
}
