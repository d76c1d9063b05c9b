using System.Text.Json.Nodes;
using Tickover.Workshop.Linkages;

namespace Tickover.Workshop.Tests.Linkages;

/// <summary>The sample linkages, as they are and with something altered.</summary>
internal static class LinkageSamples
{
    public static string Text(string name) => Repository.Read($"samples/{name}.linkage.json");

    public static Linkage Osprey { get; } = Read(Text("osprey"));

    public static Linkage Tern { get; } = Read(Text("tern"));

    /// <summary>The Osprey's linkage with every rod as long as it has to be and every lever alike.</summary>
    public static Linkage Right { get; } = Read(Altered("osprey", root =>
    {
        foreach (var rod in root["rods"]!.AsArray())
        {
            rod!.AsObject().Remove("length");
        }

        root["carburettors"]![2]!["levers"]![0]!["angle"] = -39;
        root["shafts"]![2]!.AsObject().Remove("diameter"); // a long cross-shaft winds up more to one side
    }));

    public static Linkage Read(string json)
    {
        var reading = LinkageDocument.Read(json);
        Assert.Empty(reading.Faults);
        return reading.Linkage!;
    }

    public static string Altered(string name, Action<JsonNode> alter)
    {
        var root = JsonNode.Parse(Text(name))!;
        alter(root);
        return root.ToJsonString();
    }
}
