using Tickover.Workshop.Linkages.Parts;

namespace Tickover.Workshop.Linkages.Working;

/// <summary>Says what an analysis comes to, in trade words, the first thing first.</summary>
internal static class AdviceWriter
{
    private const double Seen = 0.01;
    private const double Felt = 0.05; // degrees: a third of what makes 10 % of idle air

    public static IReadOnlyList<LinkageAdvice> Of(LinkageAnalysis a) =>
        [.. Centres(a), .. Mismatch(a), .. Rest(a), .. Reach(a), .. Clear(a), Reference(a), .. Play(a), .. Warm(a), .. WindUp(a)];

    private static IEnumerable<LinkageAdvice> Centres(LinkageAnalysis a)
    {
        foreach (var centre in a.OverCentres)
        {
            var where = LinkageWords.Pedal(centre.Down);
            yield return centre.Kind switch
            {
                OverCentreKind.Over => new LinkageAdvice("Goes over centre", $"{Capital(where)}, {centre.Rod} lies in line with the lever {centre.Lever}. Past that the plates turn back, and the springs pull the wrong way: it can hold the throttle open. Do not drive it; shorten the travel or turn the lever before anything else.", IsDanger: true),
                OverCentreKind.Dead => new LinkageAdvice("Dead point", $"{Capital(where)}, {centre.Rod} lies in line with the lever {centre.Lever}, and nothing moves on. Springs may not bring it back: it can hold the throttle open. Do not drive it; turn the lever or lengthen it first.", IsDanger: true),
                _ => new LinkageAdvice("Near the line", $"{Capital(where)}, only {LinkageWords.Degrees(centre.DegreesOff)} lie between {centre.Rod} and the lever {centre.Lever}: little pull is left there, and play and friction count for more. Keep {OverCentre.NearDegrees:0}° or more."),
            };
        }
    }

    private static IEnumerable<LinkageAdvice> Clear(LinkageAnalysis a)
    {
        if (a.OverCentres.Count == 0 && a.NearestCentre is { } nearest)
        {
            yield return new LinkageAdvice("Clear of the line", $"No rod comes into line with a lever. {Capital(nearest.Rod)} comes nearest, {LinkageWords.Degrees(nearest.DegreesOff)} off {nearest.Lever} {LinkageWords.Pedal(nearest.Down)}; keep {OverCentre.NearDegrees:0}° or more.");
        }
    }

    private static IEnumerable<LinkageAdvice> Mismatch(LinkageAnalysis a)
    {
        var (worst, after) = (a.Worst, a.Equalised.Worst);
        if (worst.OffIdle <= a.Limits.OffIdlePart && worst.Idle <= a.Limits.IdlePart)
        {
            yield return new LinkageAdvice("They open alike", $"Off idle no carburettor is further than {LinkageWords.Percent(worst.OffIdle)} from the mean, at idle {LinkageWords.Percent(worst.Idle)}. Leave rods and levers alone; look for the cause of a spread at the plates.");
            yield break;
        }

        var moment = a.Course.MinBy(m => Math.Abs(m.Down - worst.OffIdleDown))!;
        var plate = moment.Plates[worst.Carburettor];
        yield return new LinkageAdvice("They do not open alike", $"{Capital(LinkageWords.Pedal(worst.OffIdleDown))}, {a.Names[worst.Carburettor]} passes {LinkageWords.Percent(plate.DeviationPart)} {(plate.DeviationPart > 0 ? "more" : "less")} than the mean by its plate's gap, {LinkageWords.Degrees(plate.DeviationDegrees)} {(plate.DeviationDegrees > 0 ? "further open" : "further shut")}. {Shape(a)}");
        if (a.Equalised.Moves.Count == 0)
        {
            yield return new LinkageAdvice("Nothing to set", "No rod, screw or clamp that is described as adjustable mends it. Say which rods have a thread and which levers a clamp, or look for a bent lever.");
            yield break;
        }

        yield return new LinkageAdvice(
            LinkageAdvice.Expect,
            $"Off idle {LinkageWords.Percent(worst.OffIdle)} becomes {LinkageWords.Percent(after.OffIdle)}, at idle {LinkageWords.Percent(worst.Idle)} becomes {LinkageWords.Percent(after.Idle)}. "
            + (after.Idle > a.Limits.IdlePart
                ? "What the threads' steps leave at idle is less than a hand can set in a rod: drop the ball on with the plates on their stops, then balance by the stop screws."
                : a.Equalised.Moves.Any(m => m.Adjuster.Kind is LinkageAdjusterKind.Clamp)
                ? "Set the rods first. A lever finds its place by itself: rod on, plate on its stop, pedal up, then nip the clamp. Read all barrels again at idle."
                : "Read all barrels again at idle after each move: if idle moved, a rod is holding a plate."));
    }

    // A rod's error is there from the start; a lever's grows.
    private static string Shape(LinkageAnalysis a)
    {
        var carburettor = a.Worst.Carburettor;
        var early = a.Course.First(m => m.Down >= 0.1).Plates[carburettor].DeviationDegrees;
        var late = a.Course.First(m => m.Down >= 0.7).Plates[carburettor].DeviationDegrees;
        return Math.Abs(late) > 2 * Math.Abs(early) + 0.5 || (Math.Sign(late) != Math.Sign(early) && Math.Abs(late) > 0.5)
            ? "The gap changes with opening: that is lever angle as well as rod length."
            : $"The gap is there from the start: that is {(OwnLink(a, carburettor) is CouplingPart ? "the screw of its coupling" : "rod length")}.";
    }

    private static LinkPart? OwnLink(LinkageAnalysis a, int carburettor) => a.Linkage.Links.FirstOrDefault(l => l.To == a.Linkage.Carburettors[carburettor]);

    private static IEnumerable<LinkageAdvice> Rest(LinkageAnalysis a)
    {
        var off = a.HeldOffDegrees.Select((d, i) => (Degrees: d, Name: a.Names[i])).Where(x => x.Degrees > Felt).ToArray();
        if (off.Length == 0)
        {
            yield break;
        }

        var on = a.Names.Where((_, i) => a.HeldOffDegrees[i] <= Felt).ToArray();
        var held = string.Join(", ", off.Select(x => $"{x.Name} {LinkageWords.Degrees(x.Degrees)}"));
        yield return new LinkageAdvice(
            "Held off the stop",
            on.Length == 0
                ? $"With the pedal up no plate reaches its stop: {held} open. The pedal's own stop or its rod holds them all; their stop screws are idle."
                : $"With the pedal up only {LinkageWords.List(on)} {(on.Length == 1 ? "sits on its stop" : "sit on their stops")}; held open: {held}. Stop screws cannot set what a rod holds. Take the rods off before you balance at idle.");
    }

    private static IEnumerable<LinkageAdvice> Reach(LinkageAnalysis a)
    {
        var wanting = a.Reach.Select((r, i) => (r.ShortByDegrees, Name: a.Names[i])).Where(x => x.ShortByDegrees > ReachLine.Negligible).ToArray();
        if (wanting.Length == 0)
        {
            yield return new LinkageAdvice("Full throttle", $"Every plate comes within {LinkageWords.Degrees(ReachLine.Negligible)} of its full-throttle stop{(a.End is TravelEnd.FullStop ? $"; {a.EndsAt} meets it first" : "")}. Press the pedal itself, engine off, and look down each barrel: carpet and pedal stop are not in the figures.");
            yield break;
        }

        var who = string.Join(", ", wanting.Select(x => $"{x.Name} {LinkageWords.Degrees(x.ShortByDegrees)}"));
        yield return new LinkageAdvice("Short of full throttle", a.End switch
        {
            TravelEnd.FullStop => $"{Capital(a.EndsAt!)} meets its full-throttle stop first and holds the rest: {who} short. Equalise first, then look again; a bent pedal stop is no cure.",
            TravelEnd.DeadPoint => $"{Capital(a.EndsAt!)} comes to its dead point first: {who} short.",
            _ => $"The pedal meets the floor first: {who} short. More pedal travel, a longer pedal lever or a shorter lever it drives. Press the pedal itself, engine off, and look down each barrel.",
        });
    }

    private static LinkageAdvice Reference(LinkageAnalysis a) => new("Match the others to", a.ReferenceWhy);

    private static IEnumerable<LinkageAdvice> Play(LinkageAnalysis a)
    {
        var idle = a.Course[0].Plates;
        var worst = Enumerable.Range(0, idle.Count).MaxBy(i => idle[i].PlayDegrees);
        if (idle[worst].PlayDegrees <= Felt)
        {
            yield break;
        }

        var rod = a.Play.MaxBy(p => Math.Abs(p.Degrees[worst] - p.Degrees.Average()))!;
        yield return new LinkageAdvice("Play", $"{LinkageWords.Millimetres(rod.PlayMillimetres)} at each ball end lets {a.Names[worst]} wander ±{LinkageWords.Degrees(idle[worst].PlayDegrees)} against the others, ±{LinkageWords.Percent(idle[worst].PlayPart)} of idle air; most of it in {rod.Rod}. Renew worn ends before you chase figures, and come to every reading from the same side: blip, then let it settle.");
    }

    private static IEnumerable<LinkageAdvice> Warm(LinkageAnalysis a)
    {
        if (a.Warm is not { } warm || a.Linkage.Warmth is not { } warmth)
        {
            yield break;
        }

        var worst = Enumerable.Range(0, warm.Count).MaxBy(i => Math.Abs(warm[i].QuarterDegrees));
        var change = warm[worst];
        var air = Enumerable.Range(0, warm.Count).Max(i => Math.Abs(warm[i].IdlePart));
        yield return new LinkageAdvice("Warm", $"With the manifold {warmth.ManifoldRiseKelvins:0} K warmer it grows and what hangs on the body does not: {a.Names[worst]} changes most, {LinkageWords.Degrees(change.QuarterDegrees)} {(change.QuarterDegrees > 0 ? "further open" : "further shut")} at a quarter of the pedal. {Shift(air, a.Limits)}");
    }

    private static string Shift(double air, LinkageLimits limits) =>
        air < Seen ? "All move alike: the balance stays, the slack of the pedal does not. See that it still shuts when hot."
        : $"At idle the air shifts by up to {LinkageWords.Percent(air)} against the mean. {(air > limits.IdlePart / 2 ? "Set the rods hot, after a drive." : "Check hot after a drive all the same.")}";

    private static IEnumerable<LinkageAdvice> WindUp(LinkageAnalysis a)
    {
        var moments = a.Course.SelectMany(m => m.Plates.Select((p, i) => (m.Down, p.WindUpDegrees, Name: a.Names[i]))).ToArray();
        var worst = moments.MaxBy(x => x.WindUpDegrees);
        if (worst.WindUpDegrees > Felt)
        {
            yield return new LinkageAdvice("Wind-up", $"Under the return springs {worst.Name} lags {LinkageWords.Degrees(worst.WindUpDegrees)} at its far plate {LinkageWords.Pedal(worst.Down)}: shafts twist. A drive in the middle of the spindles or a lighter spring lessens it; a stop screw cannot.");
        }
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
