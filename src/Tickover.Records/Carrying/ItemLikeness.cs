using System.Text.Json.Nodes;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Carrying;

/// <summary>Compares an item with the one of the same number in another record.</summary>
internal static class ItemLikeness
{
    /// <summary>What each record sets for itself: it says when and as the how-manieth, and nothing of the thing.</summary>
    private static readonly HashSet<string> Stamps = new(StringComparer.Ordinal) { "version", "kept", "changed", "keptAt", "keptBy", "number" };

    /// <summary>The fields that read otherwise.</summary>
    public static IReadOnlyList<string> Differences(RecordItem here, RecordItem there)
    {
        var (a, b) = (Fields(here), Fields(there));
        return [.. a.Where(f => !Stamps.Contains(f.Key) && !JsonNode.DeepEquals(f.Value, b[f.Key])).Select(f => f.Key)];
    }

    /// <summary>The item as a person knows it.</summary>
    public static string Words(RecordItem item) => item switch
    {
        House => "The workshop's own entry",
        CustomerCar c => $"The car {c.Name}",
        Owner o => $"The owner {o.Name}",
        Person p => $"{p.Name} ({p.Initials})",
        Instrument i => $"The instrument {i.Name}",
        Visit v => $"Visit {v.Number}",
        Finding f => $"The finding \"{f.What}\"",
        Reading r => $"The reading {r.Measure}, {r.Place.Words()}",
        PartLine p => $"The part {p.What}",
        WorkNote n => $"The note \"{n.What}\"",
        RoadRun r => $"The road log {r.Name}",
        StockJet s => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"The stock of {s.Part} {s.Size}"),
        JetFitting f => $"The jets fitted on {f.On:yyyy-MM-dd}",
        LoggerLayout => "What is remembered of a logger's columns",
        Worksheet s => $"The worksheet {s.Name}",
        ScrewTurn t => $"What was turned, {t.Words}",
        Photograph p => $"The photograph \"{p.Caption}\"",
        _ => $"A {RecordKinds.NameOf(item)}",
    };

    private static JsonObject Fields(RecordItem item) => JsonNode.Parse(RecordKinds.Write(item))!.AsObject();
}
