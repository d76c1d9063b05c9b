using System.Text.Json.Nodes;
using Tickover.Workshop.Supply;

namespace Tickover.Workshop.Tests.Supply;

/// <summary>The sample supply, whole and altered.</summary>
internal static class SupplySamples
{
    public static string Text { get; } = Repository.Read("samples/tern.supply.json");

    public static FuelSupply Tern { get; } = SupplyDocument.Read(Text).Supply!;

    public static SupplyAnalysis Analysis { get; } = SupplyAnalyst.Of(Tern);

    /// <summary>The sample with one change made to its document.</summary>
    public static string Altered(Action<JsonObject> change)
    {
        var document = JsonNode.Parse(Text)!.AsObject();
        change(document);
        return document.ToJsonString();
    }

    /// <summary>A part of the document.</summary>
    public static JsonObject Part(JsonObject document, string name) =>
        document["parts"]!.AsArray().Select(part => part!.AsObject()).First(part => string.Equals((string?)part["name"], name, StringComparison.Ordinal));

    /// <summary>The analysis of the sample with one change.</summary>
    public static SupplyAnalysis With(Action<JsonObject> change) => SupplyAnalyst.Of(SupplyDocument.Read(Altered(change)).Supply!);
}
