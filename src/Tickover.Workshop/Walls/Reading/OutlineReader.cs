using System.Globalization;
using Tickover.Workshop.Cars.Reading;

namespace Tickover.Workshop.Walls.Reading;

/// <summary>Reads the outline of a wall.</summary>
internal static class OutlineReader
{
    private const string Example = "[[0, 0], [600, 0], [600, 250], [0, 250]]";
    private const string Allowed = "corners in order, each [mm to the right, mm up]";
    private const double LeastArea = 100;

    public static WallOutline? Read(ObjectReader root)
    {
        if (root["outline"] is null)
        {
            root.Faults.Missing("outline", "The outline of the wall", Allowed, $"\"outline\": {Example}");
            return null;
        }

        if (root.List("outline", Example) is not { } items)
        {
            return null;
        }

        if (items.Count is < 3 or > WallForm.MostCorners)
        {
            root.Faults.Add("outline", $"{items.Count} corners", $"3 to {WallForm.MostCorners} corners", $"Write \"outline\": {Example}.");
            return null;
        }

        var corners = items.Select((item, i) => Point(item, $"outline[{i}]", root.Faults)).ToArray();
        return Array.Exists(corners, c => c is null) ? null : Sound(new WallOutline([.. corners.OfType<WallPoint>()]), root.Faults);
    }

    public static WallPoint? Point(SourceNode node, string path, Faults faults)
    {
        if (node.Kind != SourceKind.List || node.Items.Count != 2)
        {
            faults.WrongKind(path, node, "two numbers: mm to the right, mm up", "[120, 40]");
            return null;
        }

        var (right, up) = (Number(node.Items[0], $"{path}[0]", faults), Number(node.Items[1], $"{path}[1]", faults));
        return right is { } x && up is { } y ? new WallPoint(x, y) : null;
    }

    private static WallOutline? Sound(WallOutline outline, Faults faults)
    {
        if (outline.Crossing is { } crossing)
        {
            faults.Add("outline", $"Sides {crossing.First} and {crossing.Second} cross", Allowed + ", going round once", "Put the corners in the order you meet them going round.");
            return null;
        }

        if (outline.Area < LeastArea)
        {
            faults.Add("outline", "The outline encloses next to nothing", Allowed, "Check the corners; lengths are in mm.");
            return null;
        }

        return outline;
    }

    private static double? Number(SourceNode node, string path, Faults faults)
    {
        var limit = WallForm.Coordinate;
        if (node.Kind != SourceKind.Number || !double.TryParse(node.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value))
        {
            faults.WrongKind(path, node, "a number of mm without quotes", "120");
            return null;
        }

        if (value < limit.Least || value > limit.Most)
        {
            faults.Add(path, $"{limit.What} is {node.Described}", $"{limit.Least} to {limit.Most} mm", limit.WhatToDo);
            return null;
        }

        return value;
    }
}
