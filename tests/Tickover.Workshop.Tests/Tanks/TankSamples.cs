using System.Text.Json.Nodes;
using Tickover.Workshop.Tanks;

namespace Tickover.Workshop.Tests.Tanks;

/// <summary>The sample tanks, as they are and with something altered.</summary>
internal static class TankSamples
{
    public static TankSet Tern { get; } = Read(Repository.Read("samples/tern.tank.json"));

    public static TankSet Read(string json)
    {
        var reading = TankDocument.Read(json);
        Assert.Empty(reading.Faults);
        return reading.Set!;
    }

    public static string Altered(Action<JsonNode> alter)
    {
        var root = JsonNode.Parse(Repository.Read("samples/tern.tank.json"))!;
        alter(root);
        return root.ToJsonString();
    }

    /// <summary>A box of 500 by 300 by 200 mm, 30 l, with more of the document after it.</summary>
    public static string Box(string more = "") =>
        "{ \"format\": \"tickover-tank-1\", \"name\": \"box\", \"tanks\": [{ \"name\": \"one\", \"box\": [500, 300, 200], \"pickUp\": { \"at\": [0, 0, 10] } }]" + more + " }";
}
