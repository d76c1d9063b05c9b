using System.Text.Json;
using Tickover.Cli.Json;
using Tickover.Workshop.Linkages;

namespace Tickover.Cli.Output;

/// <summary>A linkage's analysis as JSON.</summary>
internal static class LinkageJson
{
    /// <summary>Writes the document.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <returns>The text.</returns>
    public static string Text(LinkageAnalysis analysis) => JsonSerializer.Serialize(Of(analysis), CommandJson.Readable.LinkageReport) + Environment.NewLine;

    private static LinkageReport Of(LinkageAnalysis a) => new()
    {
        Linkage = a.Linkage.Name,
        Carburettors = [.. a.Names.Select((name, i) => Carburettor(a, name, i))],
        Reference = a.Names[a.Reference],
        ReferenceWhy = a.ReferenceWhy,
        RestDegrees = Round(a.RestDegrees),
        EndDegrees = Round(a.EndDegrees),
        End = a.End.ToString(),
        EndsAt = a.EndsAt,
        Worst = Worst(a, a.Worst),
        WorstAfter = Worst(a, a.Equalised.Worst),
        Course = [.. a.Course.Select(Moment)],
        CourseAfter = [.. a.Equalised.Course.Select(Moment)],
        Moves = [.. a.Equalised.Moves.Select(m => new LinkageReportMove(m.Adjuster.Kind.ToString(), m.Adjuster.Name, Round(m.Adjuster.Value), Round(m.Value), m.Turns, LinkageMoveWords.Act(m) + "."))],
        OverCentres = [.. a.OverCentres.Select(c => new LinkageReportCentre(c.Rod, c.Lever, c.Kind.ToString(), Round(c.Down), Round(c.DegreesOff)))],
        Advice = [.. a.Advice.Select(l => new LinkageReportAdvice(l.Heading, l.Words, l.IsDanger))],
    };

    private static LinkageReportCarburettor Carburettor(LinkageAnalysis a, string name, int i) => new()
    {
        Name = name,
        HeldOffDegrees = Round(a.HeldOffDegrees[i]),
        FullDegrees = a.Linkage.Shafts[a.Linkage.Carburettors[i]].Throttle!.FullDegrees,
        ReachedDegrees = Round(a.Reach[i].Degrees),
        ShortByDegrees = Round(a.Reach[i].ShortByDegrees),
        PlayDegrees = Round(a.Course[0].Plates[i].PlayDegrees),
        PlayPart = Round(a.Course[0].Plates[i].PlayPart),
        WindUpDegrees = Round(a.Course.Max(m => m.Plates[i].WindUpDegrees)),
        WarmIdleDegrees = a.Warm is { } idle ? Round(idle[i].IdleDegrees) : null,
        WarmQuarterDegrees = a.Warm is { } quarter ? Round(quarter[i].QuarterDegrees) : null,
        WarmIdlePart = a.Warm is { } part ? Round(part[i].IdlePart) : null,
    };

    private static LinkageReportWorst Worst(LinkageAnalysis a, LinkageWorst worst) =>
        new(Round(worst.Idle), Round(worst.OffIdle), Round(worst.OffIdleDown), a.Names[worst.Carburettor]);

    private static LinkageReportMoment Moment(LinkageMoment m) => new(
        Round(m.Down), Round(m.PedalDegrees), [.. m.Plates.Select(p => Round(p.Degrees))], [.. m.Plates.Select(p => Round(p.DeviationPart))], m.LimitPart);

    private static double Round(double value) => Math.Round(value, 3);
}
