using Tickover.Workshop.Visits;

namespace Tickover.Workshop.JetFittings;

/// <summary>What a visit did to the jets and what the road showed of it, from the record alone.</summary>
public sealed record JetStory
{
    /// <summary>Runs by the jets they were driven with, in order.</summary>
    public required IReadOnlyList<RunShowing> Showings { get; init; }

    /// <summary>Sets fitted that still stand, in order.</summary>
    public required IReadOnlyList<FittingStory> Fittings { get; init; }

    /// <summary>The jets that were in when the car came; null where its description cannot be read.</summary>
    public required JetsIn? Arrived { get; init; }

    /// <summary>The jets that are in now; null where its description cannot be read.</summary>
    public required JetsIn? Left { get; init; }

    /// <summary>Logs kept but not counted.</summary>
    public required int LeftOut { get; init; }

    /// <summary>What was driven with the jets of arrival; null where nothing was.</summary>
    public RunShowing? AsArrived => Showings.FirstOrDefault(s => s.Jets.Same(Arrived));

    /// <summary>What was driven with the jets that are in now, where they are others than on arrival; null where nothing was.</summary>
    public RunShowing? AsLeft => Left?.Same(Arrived) == true ? null : Showings.LastOrDefault(s => s.Jets.Same(Left));

    /// <summary>Whether there is anything to tell.</summary>
    public bool IsEmpty => Showings.Count == 0 && Fittings.Count == 0;

    /// <summary>Reads the story off a visit.</summary>
    /// <param name="record">The visit.</param>
    /// <returns>The story.</returns>
    public static JetStory Of(VisitRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        var showings = RunShowing.ByJets(record.Runs);
        var standing = record.Fittings.Where(f => !f.Removed && record.Descriptions.Any(d => d.Id == f.Description)).OrderBy(f => f.On).ThenBy(f => f.Kept).ToList();
        return new JetStory
        {
            Showings = showings,
            Fittings = [.. standing.Select(f => new FittingStory(f, Proof(record, f, showings)))],
            Arrived = Document(Before(record, standing)) ?? (showings is [var first, ..] ? first.Jets : null),
            Left = Document(record.Descriptions is [.., var latest] ? latest : null) ?? (showings is [.., var final] ? final.Jets : null),
            LeftOut = record.Runs.Count(r => r.LeftOut),
        };
    }

    // A description may be mended before anything is changed; what came in is therefore what the first set or the first run found.
    private static CarDescription? Before(VisitRecord record, List<JetFitting> fittings)
    {
        var first = fittings is [var fitting, ..] ? record.Descriptions.TakeWhile(d => d.Id != fitting.Description).LastOrDefault() : null;
        var run = record.Runs.Where(r => !r.LeftOut).OrderBy(r => r.On).ThenBy(r => r.Kept).FirstOrDefault();
        return run is not null && (fittings.Count == 0 || run.On < fittings[0].On || (run.On == fittings[0].On && run.Kept < fittings[0].Kept))
            ? new CarDescription { Document = run.Document }
            : first ?? (record.Descriptions is [var oldest, ..] ? oldest : null);
    }

    private static JetsIn? Document(CarDescription? description) => description is null ? null : JetsIn.Of(description.Document);

    private static RunShowing? Proof(VisitRecord record, JetFitting fitting, IReadOnlyList<RunShowing> showings)
    {
        var jets = Document(record.Descriptions.First(d => d.Id == fitting.Description));
        return showings.FirstOrDefault(s => s.Jets.Same(jets) && s.Runs.Any(r => r.On >= fitting.On));
    }
}
