using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Demonstration;

/// <summary>The jets on the house's shelf, and the road runs of two of its cars.</summary>
internal static class ShelfAndRuns
{
    public static void Play(Script script, DemonstrationDocuments documents)
    {
        if (documents.Shelf is { } shelf)
        {
            script.Do("the shelf counted", null, Cast.Birch.Id, [.. shelf.Stock.Select(s => new StockJet { Id = StockJet.IdFor(s.Part, s.Size), Part = s.Part, Size = s.Size, Count = s.Count })]);
        }

        if (documents.TernRoad is { } tern)
        {
            TernArrival.Visit(script, 9000).On(Stage.Road, 1, Cast.Hale).Add(Run(tern, documents.Tern2800))
                .Add(new WorkNote { Kind = WorkKind.NotDone, What = "Jets left as they are", Why = "The logged run reads lean between the light and the cruising throttle; larger jets were not within the agreed work.", Further = "At the next visit; the set is reckoned." });
        }

        if (documents.OspreyRoad is { } osprey)
        {
            new VisitScript(script, "osprey-v8", 9000).On(Stage.Arrival, 22, Cast.Hale).Add(Run(osprey, documents.OspreyV8));
        }
    }

    private static RoadRun Run(DemonstrationRun run, string document) => new() { Name = run.Name, Points = run.Points, Told = run.Told, Document = document };
}
