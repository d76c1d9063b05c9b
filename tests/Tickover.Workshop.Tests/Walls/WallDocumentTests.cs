using Tickover.Workshop.Walls;

namespace Tickover.Workshop.Tests.Walls;

public sealed class WallDocumentTests
{
    [Fact]
    public void The_grid_covers_the_outline_and_counts_cut_cells_by_area()
    {
        var survey = WallSamples.Survey(WallSamples.Plain.Replace("[300, 200], [0, 200]", "[300, 200], [50, 200], [0, 150]", StringComparison.Ordinal));

        Assert.Equal(24, survey.Cells.Count);
        Assert.Equal(1250, survey.Cells[0].AreaSquareMillimetres, 1e-9);
        Assert.Equal(survey.Outline.Area, survey.Cells.Sum(c => c.AreaSquareMillimetres), 1e-6);
        Assert.Equal(("A1", "F4"), (survey.Cells[0].Name, survey.Cells[^1].Name));
        Assert.Equal("D3", survey.Deepest!.Name);
    }

    [Fact]
    public void What_the_rows_do_not_reach_is_not_read()
    {
        var survey = WallSamples.Survey(WallSamples.Plain.Replace("[300, 0], [300, 200]", "[420, 0], [420, 200]", StringComparison.Ordinal));

        Assert.Equal(36, survey.Cells.Count);
        Assert.Equal(survey.Outline.Area, survey.Cells.Sum(c => c.AreaSquareMillimetres), 1e-6);
        Assert.Equal(12, survey.Read.Count());
    }

    [Fact]
    public void Wall_left_is_turned_into_depth_and_its_signs_with_it()
    {
        var survey = WallSamples.Survey(WallSamples.Plain.Replace("\"age\": 20", "\"age\": 20, \"reads\": \"wall left\"", StringComparison.Ordinal)
            .Replace("[0.10, 0.12, null", "[1.10, \">1.15\", \"<0.9\"", StringComparison.Ordinal).Replace("[0.13, null", "[\"hole\", 1.22", StringComparison.Ordinal));

        Assert.Equal((CellReadingKind.Depth, 0.10), (survey.Cells[0].Reading.Kind, Math.Round(survey.Cells[0].Reading.DepthMillimetres, 9)));
        Assert.Equal((CellReadingKind.Shallower, 0.05), (survey.Cells[1].Reading.Kind, Math.Round(survey.Cells[1].Reading.DepthMillimetres, 9)));
        Assert.Equal((CellReadingKind.Deeper, 0.3), (survey.Cells[2].Reading.Kind, Math.Round(survey.Cells[2].Reading.DepthMillimetres, 9)));
        Assert.Equal(CellReadingKind.Hole, survey.Cells[12].Reading.Kind);
        Assert.Equal(-0.02, survey.Cells[13].Reading.DepthMillimetres, 1e-9);
    }

    [Theory]
    [InlineData("\"metal\": \"steel\"", "\"metal\": \"aluminum alloy\"", "metal", "no metal known here")]
    [InlineData("\"metal\": \"steel\"", "\"metal\": \"tern steel\"", "metal", "Did you mean \"terne steel\"?")]
    [InlineData("\"metal\": \"steel\"", "\"metal\": \"polyethylene\"", "metal", "plastics do not rust")]
    [InlineData("\"thickness\": 1.2", "\"thickness\": -1.2", "thickness", "0.3 to 6 mm")]
    [InlineData("0.10, 0.12", "-0.10, 0.12", "grid.rows[0][0]", "below zero")]
    [InlineData("0.10, 0.12", "1.30, 0.12", "grid.rows[0][0]", "Write \"hole\" where it is through")]
    [InlineData("0.10, 0.12", "\"deep\", 0.12", "grid.rows[0][0]", "null where nothing was read")]
    [InlineData("[300, 0], [300, 200]", "[180, 0], [180, 200]", "grid.rows[0][5]", "outside the outline")]
    [InlineData("[300, 0], [300, 200], [0, 200]", "[300, 200], [300, 0], [0, 200]", "outline", "cross")]
    [InlineData("[300, 0], [300, 200], [0, 200]", "[300, 0]", "outline", "2 corners")]
    [InlineData("\"age\": 20", "\"age\": [20, 10]", "age", "the least first")]
    [InlineData("\"age\": 20", "\"age\": 0", "age", "0.1 to 150 years")]
    [InlineData("\"age\": 20", "\"age\": 20, \"surveyed\": \"14.5.2026\"", "surveyed", "2026-05-14")]
    [InlineData("\"age\": 20", "\"age\": 20, \"growth\": { \"slow\": 0.9, \"fast\": 0.5 }", "growth", "slow below fast")]
    [InlineData("\"age\": 20", "\"age\": 20, \"pads\": [{ \"name\": \"p\", \"from\": [0, 0], \"to\": [0, 50] }]", "pads[0]", "no area")]
    [InlineData("\"age\": 20", "\"age\": 20, \"contacts\": [{ \"where\": \"strap\", \"metal\": \"bras\" }]", "contacts[0].metal", "Did you mean \"brass\"?")]
    [InlineData("\"cell\": 50", "\"cell\": 5", "grid", "2400 cells")]
    [InlineData("\"age\": 20", "\"age\": 20, \"pad\": []", "pad", "Did you mean \"pads\"?")]
    [InlineData("tickover-wall-1", "tickover-leak-1", "format", "tickover-wall-1")]
    public void A_slip_is_said_with_its_place_and_a_way_out(string from, string to, string path, string said)
    {
        var reading = WallDocument.Read(WallSamples.Plain.Replace(from, to, StringComparison.Ordinal));

        Assert.Null(reading.Survey);
        Assert.Contains(reading.Faults, f => f.Path.StartsWith(path, StringComparison.Ordinal) && $"{f.Problem} {f.Allowed} {f.WhatToDo}".Contains(said, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{ \"format\": \"tickover-wall-1\" }")]
    [InlineData("{ \"format\": \"tickover-wall-1\", \"grid\": 3, \"outline\": \"x\", \"pads\": [1], \"contacts\": { } }")]
    public void Nothing_typed_ever_throws(string json) => Assert.NotEmpty(WallDocument.Read(json).Faults);
}
