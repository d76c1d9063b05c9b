using System.Globalization;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Walls.Reading;

/// <summary>Reads the grid of readings, and lays it on over the whole outline.</summary>
internal sealed class GridReader(ObjectReader root, WallOutline outline, IReadOnlyList<WallPad> pads, SheetReading sheet)
{
    private const string RowsExample = "[[0.1, 0.2, null], [\"<0.1\", 0.4, \"hole\"]]";
    private const int Letters = 26;

    public (IReadOnlyList<WallCell> Cells, double CellArea)? Read()
    {
        if (root["grid"] is null)
        {
            root.Faults.Missing("grid", "The grid of readings", "cells and rows", $"\"grid\": {{ \"cell\": 50, \"rows\": {RowsExample} }}");
        }

        if (root.Object("grid", WallForm.Grid) is not { } grid || Sides(grid) is not { } cell || Rows(grid) is not { } rows)
        {
            return null;
        }

        var box = outline.Box;
        var at = grid["at"] is { } node ? OutlineReader.Point(node, grid.At("at"), root.Faults) : new WallPoint(box.Left, box.Top);
        return at is { } corner ? Laid(corner, cell, rows, box) : null;
    }

    private static (double Wide, double Tall)? Sides(ObjectReader grid)
    {
        if (grid["cell"] is { Kind: SourceKind.List })
        {
            return grid.Numbers("cell", (2, 2), WallForm.Cell) is { } sides ? (sides[0], sides[1]) : null;
        }

        var side = grid.Needed("cell", WallForm.Cell);
        return double.IsNaN(side) ? null : (side, side);
    }

    private CellReading[][]? Rows(ObjectReader grid)
    {
        if (grid["rows"] is null)
        {
            root.Faults.Missing(grid.At("rows"), "The rows of readings", "a list for each row, the top one first", $"\"rows\": {RowsExample}");
        }

        if (grid.List("rows", RowsExample) is not { } items)
        {
            return null;
        }

        if (items.Count is 0 or > WallForm.MostAcross || items.Any(i => i.Kind != SourceKind.List || i.Items.Count is 0 or > WallForm.MostAcross))
        {
            root.Faults.Add(grid.At("rows"), "The rows cannot be read", $"1 to {WallForm.MostAcross} lists of 1 to {WallForm.MostAcross} readings", $"Write \"rows\": {RowsExample}.");
            return null;
        }

        return [.. items.Select((row, i) => row.Items.Select((node, j) => Reading(node, $"{grid.At("rows")}[{i}][{j}]")).ToArray())];
    }

    private CellReading Reading(SourceNode node, string path)
    {
        const string allowed = "a number of mm, null where nothing was read, \"hole\", or \"<0.1\" and \">0.6\" where it is beyond the gauge";
        if (node is { Kind: SourceKind.Literal, Text: "null" })
        {
            return default;
        }

        if (node.Kind == SourceKind.Text && string.Equals(node.Text.Trim(), "hole", StringComparison.OrdinalIgnoreCase))
        {
            return new CellReading(CellReadingKind.Hole, sheet.Thickness);
        }

        var (sign, number) = Parted(node);
        if (!double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) || !double.IsFinite(value))
        {
            root.Faults.WrongKind(path, node, allowed, "0.35");
            return default;
        }

        if (sheet.Complaint(value, number) is { } complaint)
        {
            root.Faults.Add(path, complaint.Problem, complaint.Allowed, complaint.WhatToDo);
            return default;
        }

        // More wall left than the gauge's end is less pit.
        var kind = sign switch { '<' => CellReadingKind.Shallower, '>' => CellReadingKind.Deeper, _ => CellReadingKind.Depth };
        return new CellReading(sheet.IsWallLeft ? Turned(kind) : kind, sheet.Depth(value));
    }

    // A number in quotes is one only with a sign before it.
    private static (char Sign, string Number) Parted(SourceNode node) => node switch
    {
        { Kind: SourceKind.Number } => (' ', node.Text),
        { Kind: SourceKind.Text } when node.Text.Trim() is ['<' or '>', ..] text => (text[0], text[1..].Trim()),
        _ => (' ', string.Empty),
    };

    private static CellReadingKind Turned(CellReadingKind kind) => kind switch
    {
        CellReadingKind.Shallower => CellReadingKind.Deeper,
        CellReadingKind.Deeper => CellReadingKind.Shallower,
        _ => kind,
    };

    // Cells nobody read belong to the area nobody read: the grid goes on until the outline is covered.
    private (IReadOnlyList<WallCell> Cells, double CellArea)? Laid(WallPoint corner, (double Wide, double Tall) cell, CellReading[][] rows, WallBox box)
    {
        var (left, right) = ((int)Math.Floor((box.Left - corner.Right) / cell.Wide + 1e-9), (int)Math.Ceiling((box.Right - corner.Right) / cell.Wide - 1e-9));
        var (top, bottom) = ((int)Math.Floor((corner.Up - box.Top) / cell.Tall + 1e-9), (int)Math.Ceiling((corner.Up - box.Bottom) / cell.Tall - 1e-9));
        (left, top) = (Math.Min(left, 0), Math.Min(top, 0));
        (right, bottom) = (Math.Max(right, rows.Max(r => r.Length)), Math.Max(bottom, rows.Length));
        if ((long)(right - left) * (bottom - top) > WallForm.MostCells)
        {
            root.Faults.Add("grid.cell", $"The grid has {(long)(right - left) * (bottom - top)} cells over the outline", $"at most {WallForm.MostCells}", "Use larger cells, or check where the grid begins.");
            return null;
        }

        var cells = new List<WallCell>();
        for (var row = top; row < bottom; row++)
        {
            for (var column = left; column < right; column++)
            {
                var place = new WallBox(corner.Right + column * cell.Wide, corner.Up - (row + 1) * cell.Tall, corner.Right + (column + 1) * cell.Wide, corner.Up - row * cell.Tall);
                var reading = row >= 0 && row < rows.Length && column >= 0 && column < rows[row].Length ? rows[row][column] : default;
                Add(cells, place, (column - left, row - top), reading, $"grid.rows[{row}][{column}]");
            }
        }

        return (cells, cell.Wide * cell.Tall);
    }

    private void Add(List<WallCell> cells, WallBox place, (int Column, int Row) at, CellReading reading, string path)
    {
        var area = outline.AreaIn(place);
        if (area >= WallForm.LeastInside * place.Area)
        {
            cells.Add(new WallCell
            {
                Name = Letter(at.Column) + (at.Row + 1).ToString(CultureInfo.InvariantCulture),
                Box = place,
                AreaSquareMillimetres = area,
                Zone = pads.Any(p => p.Box.Holds(place.Middle)) ? ZoneKind.Pad : ZoneKind.Open,
                Reading = reading,
            });
        }
        else if (reading.Kind is not CellReadingKind.NotRead)
        {
            root.Faults.Add(path, "This reading lies outside the outline", "readings inside, null outside", "Write null here, or check the outline and where the grid begins.");
        }
    }

    private static string Letter(int column) => column < Letters ? ((char)('A' + column)).ToString() : Letter(column / Letters - 1) + (char)('A' + column % Letters);
}
