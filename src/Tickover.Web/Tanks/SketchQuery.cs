using System.Globalization;
using Microsoft.AspNetCore.Http.Extensions;
using Tickover.Physics.Tanks;
using Tickover.Workshop.Tanks.Sketching;

namespace Tickover.Web.Tanks;

/// <summary>A sketch as its address or its form says it. The address says all of it, so that a reload loses nothing and Back is a step back.</summary>
public sealed record SketchQuery
{
    private const char Between = '~';  // corners; neither needs escaping in an address
    private const char Within = '_';   // the figures of one
    private const int LongestName = 40;
    private const NumberStyles Plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;

    private readonly List<string> _problems = [];

    /// <summary>The sketch, as far as it could be read.</summary>
    public OutlineSketch Sketch { get; private init; } = new();

    /// <summary>The corners as typed.</summary>
    public IReadOnlyList<SketchRow> Rows { get; private init; } = [];

    /// <summary>What could not be read, a sentence each.</summary>
    public IReadOnlyList<string> Problems => _problems;

    /// <summary>What a tap does: sets the next corner, puts one into a side, or takes one out.</summary>
    public string Tap { get; private init; } = "next";

    /// <summary>What a finger snaps to, mm.</summary>
    public string Snap { get; private init; } = "10";

    /// <summary>Whether a form was sent, whose answer has an address of its own.</summary>
    public bool IsForm { get; private init; }

    /// <summary>Reads an address.</summary>
    /// <param name="query">What is asked.</param>
    /// <param name="start">The sketch to begin with where the address says none.</param>
    /// <returns>The sketch and what was wrong.</returns>
    public static SketchQuery Read(IQueryCollection query, OutlineSketch start)
    {
        ArgumentNullException.ThrowIfNull(query);
        var read = new SketchQuery();
        var isForm = query.ContainsKey("x1");
        var rows = isForm ? Typed(query) : query.ContainsKey("corners") ? Written(query["corners"].ToString()) : [.. start.Corners.Select(Row)];
        var sketch = read.Sizes(query, start) with { View = SeenFrom(query, start.View), Corners = read.Corners(rows) };
        return read with
        {
            Rows = rows,
            Sketch = isForm && read._problems.Count == 0 ? read.Acted(query, rows, sketch) : sketch,
            Tap = query["tap"].ToString() is "in" or "out" ? query["tap"].ToString() : "next",
            Snap = query["snap"].ToString() is "5" or "1" ? query["snap"].ToString() : "10",
            IsForm = isForm,
        };
    }

    /// <summary>The address of the sketch.</summary>
    /// <param name="page">The page it is on.</param>
    /// <returns>The page with the whole sketch behind it.</returns>
    public string Address(string page)
    {
        var query = new QueryBuilder
        {
            { "view", Sketch.View.ToString().ToLowerInvariant() },
            { "corners", string.Join(Between, Sketch.Corners.Select(Row).Select(r => string.Join(Within, new[] { r.Right, r.Up, r.Radius }.Where(f => f.Length > 0)))) },
            { "depth", Sketch.Depth is { } depth ? Figure(depth) : "" },
        };
        void Add(string name, string value, bool isUsual)
        {
            if (!isUsual)
            {
                query.Add(name, value);
            }
        }

        Add("wall", Figure(Sketch.Wall), Sketch.Wall == 0);
        Add("stated", Sketch.Stated is { } stated ? Figure(stated) : "", Sketch.Stated is null);
        Add("name", Sketch.Name, Sketch.Name.Length == 0);
        Add("ahead", Figure(Sketch.At.Ahead), Sketch.At.Ahead == 0);
        Add("left", Figure(Sketch.At.Left), Sketch.At.Left == 0);
        Add("up", Figure(Sketch.At.Up), Sketch.At.Up == 0);
        Add("tap", Tap, string.Equals(Tap, "next", StringComparison.Ordinal));
        Add("snap", Snap, string.Equals(Snap, "10", StringComparison.Ordinal));
        return page + query.ToQueryString();
    }

    /// <summary>A length as it is shown and written.</summary>
    /// <param name="millimetres">mm.</param>
    /// <returns>With a tenth where there is one.</returns>
    public static string Figure(double millimetres) => millimetres.ToString("0.##", CultureInfo.InvariantCulture);

    private static OutlineView SeenFrom(IQueryCollection query, OutlineView otherwise) => query["view"].ToString() switch
    {
        "rear" => OutlineView.Rear,
        "plan" => OutlineView.Plan,
        "side" => OutlineView.Side,
        _ => otherwise,
    };

    private static SketchRow Row(SketchCorner c) => new(Figure(c.Right), Figure(c.Up), c.Radius > 0 ? Figure(c.Radius) : "");

    private static SketchRow[] Written(string corners) =>
    [
        .. corners.Split(Between, StringSplitOptions.RemoveEmptyEntries).Take(OutlineSketch.MostCorners)
            .Select(c => c.Split(Within)).Select(f => new SketchRow(f[0], f.ElementAtOrDefault(1) ?? "", f.ElementAtOrDefault(2) ?? "")),
    ];

    private static SketchRow[] Typed(IQueryCollection query) =>
    [
        .. Enumerable.Range(1, OutlineSketch.MostCorners)
            .Select(i => new SketchRow(Text(query, $"x{i}"), Text(query, $"y{i}"), Text(query, $"r{i}")))
            .Where(r => !r.IsBlank),
    ];

    private static string Text(IQueryCollection query, string name) => query[name].ToString().Trim();

    private static string Short(string name) => name.Length <= LongestName ? name : name[..LongestName];

    // A field that is there and empty takes a figure back; one that is not there leaves it.
    private OutlineSketch Sizes(IQueryCollection query, OutlineSketch start) => start with
    {
        Depth = query.ContainsKey("depth") ? Number(query, "depth", "Depth", 0) : start.Depth,
        Wall = (query.ContainsKey("wall") ? Number(query, "wall", "Thickness of the sheet", 0) : start.Wall) ?? 0,
        Stated = query.ContainsKey("stated") ? Number(query, "stated", "Litres stated", 0) : start.Stated,
        Name = query.ContainsKey("name") ? Short(query["name"].ToString().Trim()) : start.Name,
        At = (Place(query, "ahead", "Ahead", start.At.Ahead), Place(query, "left", "To the left", start.At.Left), Place(query, "up", "Up", start.At.Up)),
    };

    private double Place(IQueryCollection query, string name, string label, double otherwise) => query.ContainsKey(name) ? Number(query, name, label, null) ?? 0 : otherwise;

    private SketchCorner[] Corners(SketchRow[] rows) =>
    [
        .. rows.Select((r, i) => (Right: Figure(r.Right, $"Corner {i + 1}, right"), Up: Figure(r.Up, $"Corner {i + 1}, up"), Radius: r.Radius.Length == 0 ? 0 : Figure(r.Radius, $"Corner {i + 1}, radius")))
            .Where(c => c is { Right: not null, Up: not null, Radius: not null })
            .Select(c => new SketchCorner(c.Right!.Value, c.Up!.Value, Math.Max(0, c.Radius!.Value))),
    ];

    // A side was typed where its field differs from what it was; the corners go along. Then the button that was pressed.
    private OutlineSketch Acted(IQueryCollection query, SketchRow[] rows, OutlineSketch sketch)
    {
        for (var i = 1; i <= rows.Length; i++)
        {
            var typed = Text(query, $"s{i}");
            if (typed.Length > 0 && !string.Equals(typed, Text(query, $"w{i}"), StringComparison.Ordinal) && Figure(typed, $"Side from corner {i}") is { } length)
            {
                if (length <= 0)
                {
                    _problems.Add($"Side from corner {i}: its length is above zero. To take a corner out, press Take out.");
                }

                sketch = sketch.WithSide(i - 1, length);
            }
        }

        return Of(query, "insert") is { } side && side < sketch.Corners.Count && sketch.Corners.Count < OutlineSketch.MostCorners ? sketch.WithCornerIn(side)
            : Of(query, "drop") is { } corner ? sketch.Without(corner)
            : query["act"].ToString() switch
            {
                "back" => sketch.Without(sketch.Corners.Count - 1),
                "clear" => sketch with { Corners = [] },
                _ => sketch,
            };
    }

    private static int? Of(IQueryCollection query, string name) =>
        int.TryParse(query[name], NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 ? number - 1 : null;

    private double? Number(IQueryCollection query, string name, string label, double? least)
    {
        if (Text(query, name) is not { Length: > 0 } text || Figure(text, label) is not { } number)
        {
            return null;
        }

        if (number < least)
        {
            _problems.Add($"{label}: {text} is below zero. Write it without a sign.");
            return null;
        }

        return number;
    }

    private double? Figure(string text, string label)
    {
        if (double.TryParse(text.Replace(',', '.').Replace('−', '-'), Plain, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number))
        {
            return number;
        }

        _problems.Add(text.Length == 0 ? $"{label}: no figure. A corner has two, to the right and up." : $"{label}: \"{text}\" is no number. Write digits, with comma or point.");
        return null;
    }
}
