using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Tickover.Physics.Tanks;
using Tickover.Workshop.Tanks.Reading;

namespace Tickover.Workshop.Tanks.Sketching;

/// <summary>A sketch as a tank document: a new one, or put into one that is kept; and back from there.</summary>
public static partial class SketchDocument
{
    private static readonly JsonSerializerOptions Legible = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>A document of this tank alone.</summary>
    /// <param name="sketch">The sketch; it has a depth.</param>
    /// <param name="title">What the document is called.</param>
    /// <returns>The document.</returns>
    public static string New(OutlineSketch sketch, string title)
    {
        ArgumentNullException.ThrowIfNull(sketch);
        return Text(new JsonObject { ["format"] = TankDocument.Format, ["name"] = title, ["tanks"] = new JsonArray(Drawn(sketch, new JsonObject())) });
    }

    /// <summary>Puts the tank into a document: in place of the shape of the one of the same name, which keeps its fittings, else beside the others.</summary>
    /// <param name="document">The document.</param>
    /// <param name="sketch">The sketch; it has a depth.</param>
    /// <returns>The document so changed; null where it cannot be read.</returns>
    public static string? Into(string document, OutlineSketch sketch)
    {
        ArgumentNullException.ThrowIfNull(sketch);
        if (Root(document) is not { } root)
        {
            return null;
        }

        var tanks = root["tanks"] as JsonArray;
        if (tanks is null)
        {
            root["tanks"] = tanks = [];
        }

        if (Find(tanks, sketch.Name) is { } known)
        {
            Drawn(sketch, known);
        }
        else
        {
            tanks.Add(Drawn(sketch, new JsonObject()));
        }

        return Text(root);
    }

    /// <summary>The tanks of a document.</summary>
    /// <param name="document">The document.</param>
    /// <returns>Each one's name, and whether it is drawn by an outline; empty where the document cannot be read.</returns>
    public static IReadOnlyList<(string Name, bool IsOutline)> Tanks(string document) => Root(document)?["tanks"] is JsonArray tanks
        ? [.. tanks.OfType<JsonObject>().Select((t, i) => (Name(t, i), t["outline"] is JsonObject))]
        : [];

    /// <summary>The sketch of a tank in a document.</summary>
    /// <param name="document">The document, one that was read without fault.</param>
    /// <param name="name">The tank.</param>
    /// <returns>Its sketch; null where it has none.</returns>
    public static OutlineSketch? From(string document, string name)
    {
        if (Root(document)?["tanks"] is not JsonArray tanks || Find(tanks, name) is not { } tank || tank["outline"] is not JsonObject outline)
        {
            return null;
        }

        var view = (string?)outline["view"] switch { "rear" => OutlineView.Rear, "plan" => OutlineView.Plan, _ => OutlineView.Side };
        var at = tank["at"] is JsonArray { Count: 3 } place ? ((double)place[0]!, (double)place[1]!, (double)place[2]!) : default;
        return outline["corners"] is JsonArray { Count: <= OutlineSketch.MostCorners } corners
            ? new OutlineSketch
            {
                View = view,
                Corners = [.. corners.OfType<JsonArray>().Select(c => OutlineSketch.FromView(view, (double)c[0]!, (double)c[1]!, c.Count > 2 ? (double)c[2]! : 0))],
                Depth = (double?)outline["depth"],
                Wall = (double?)tank["wall"] ?? 0,
                Name = name,
                At = at,
            }
            : null;
    }

    private static JsonObject Drawn(OutlineSketch sketch, JsonObject tank)
    {
        foreach (var shape in TankForm.Shapes)
        {
            tank.Remove(shape);
        }

        tank["name"] = sketch.Name.Length > 0 ? sketch.Name : "tank";
        if (sketch.At != default || tank["at"] is not null)
        {
            tank["at"] = new JsonArray(sketch.At.Ahead, sketch.At.Left, sketch.At.Up);
        }

        tank["outline"] = new JsonObject
        {
            ["view"] = sketch.View.ToString().ToLowerInvariant(),
            ["depth"] = sketch.Depth,
            ["corners"] = new JsonArray([.. sketch.Corners.Select(c => Corner(sketch.View, c))]),
        };
        tank.Remove("wall");
        if (sketch.Wall > 0)
        {
            tank["wall"] = sketch.Wall;
        }

        return tank;
    }

    private static JsonArray Corner(OutlineView view, SketchCorner c)
    {
        var (across, up) = OutlineSketch.ToView(view, c);
        return c.Radius > 0 ? [across, up, c.Radius] : [across, up];
    }

    private static JsonObject? Find(JsonArray tanks, string name) =>
        tanks.OfType<JsonObject>().Where((t, i) => string.Equals(Name(t, i), name, StringComparison.Ordinal)).FirstOrDefault();

    // As the reader calls a tank without a name.
    private static string Name(JsonObject tank, int index) =>
        tank["name"] is JsonValue value && value.TryGetValue<string>(out var name) ? name : FormattableString.Invariant($"tank {index + 1}");

    private static JsonObject? Root(string document)
    {
        try
        {
            var root = JsonNode.Parse(document) as JsonObject;
            _ = root?.Count; // a member given twice is found out by counting
            return root;
        }
        catch (Exception fault) when (fault is JsonException or ArgumentException)
        {
            return null;
        }
    }

    // A corner is read on one line.
    private static string Text(JsonObject root) =>
        NumbersAlone().Replace(root.ToJsonString(Legible), m => $"[{string.Join(", ", m.Groups["numbers"].Value.Split(',').Select(n => n.Trim()))}]");

    [GeneratedRegex(@"\[(?<numbers>[-+0-9.eE,\s]+)\]", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex NumbersAlone();
}
