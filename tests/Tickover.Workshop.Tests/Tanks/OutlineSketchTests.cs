using Tickover.Physics.Tanks;
using Tickover.Workshop.Tanks;
using Tickover.Workshop.Tanks.Sketching;

namespace Tickover.Workshop.Tests.Tanks;

public sealed class OutlineSketchTests
{
    private static readonly OutlineSketch Box = new() { Corners = [new(0, 0), new(500, 0), new(500, 250), new(0, 250)], Depth = 300, Name = "left" };

    [Theory]
    [InlineData(OutlineView.Side)]
    [InlineData(OutlineView.Rear)]
    [InlineData(OutlineView.Plan)]
    public void A_box_holds_its_three_sizes_whichever_way_it_is_seen(OutlineView view)
    {
        var tank = SketchAnalyst.Of(Box with { View = view }).Tank!;

        Assert.Equal(37.5, tank.Litres, 1e-9);
        Assert.Equal(2 * (0.5 * 0.25 + 0.5 * 0.3 + 0.25 * 0.3), tank.WallSquareMetres, 1e-9);
        Assert.Equal(view is OutlineView.Plan ? 300 : 250, tank.Strapping[^1].DipMillimetres, 1e-9);
        Assert.All(tank.Strapping, line => Assert.Equal(37.5 * line.DipMillimetres / tank.Strapping[^1].DipMillimetres, line.Litres, 1e-9));
        Assert.Equal(tank.WallSquareMetres, tank.Strapping[^1].WettedSquareMetres, 1e-9);
    }

    [Fact]
    public void Right_in_the_picture_is_the_cars_right_from_behind_and_from_above()
    {
        OutlineSketch right = new() { Corners = [new(100, 50), new(400, 50), new(400, 250)], Depth = 200 };

        var behind = SketchAnalyst.Of(right with { View = OutlineView.Rear }).Tank!.Set.Tanks[0].Shape;
        var above = SketchAnalyst.Of(right with { View = OutlineView.Plan }).Tank!.Set.Tanks[0].Shape;
        var side = SketchAnalyst.Of(right).Tank!.Set.Tanks[0].Shape;

        Assert.Equal((-0.4, -0.1), (behind.Lowest.Y, behind.Highest.Y));
        Assert.Equal((-0.4, 0.05, 0.25), (above.Lowest.Y, above.Lowest.X, above.Highest.X));
        Assert.Equal((0.1, 0.4, 0.05), (side.Lowest.X, side.Highest.X, side.Lowest.Z));
    }

    [Fact]
    public void A_sheet_measured_outside_is_taken_off_all_round()
    {
        var tank = SketchAnalyst.Of(Box with { Wall = 1.5 }).Tank!;

        Assert.Equal(0.497 * 0.247 * 0.297 * 1000, tank.Litres, 1e-9);
        Assert.Equal(297, tank.DepthMillimetres, 1e-9);
    }

    [Fact]
    public void The_depth_that_would_hold_what_was_stated_does_hold_it()
    {
        var depth = SketchAnalyst.Of(Box with { Wall = 1.5, Stated = 40 }).Tank!.DepthForStatedMillimetres!.Value;

        Assert.Equal(40, SketchAnalyst.Of(Box with { Wall = 1.5, Depth = depth }).Tank!.Litres, 1e-6);
    }

    [Fact]
    public void What_is_missing_is_asked_for_and_nothing_is_worked_out()
    {
        var answer = SketchAnalyst.Of(new OutlineSketch { Corners = [new(0, 0), new(100, 0)] });

        Assert.Null(answer.Tank);
        Assert.Empty(answer.Problems);
        Assert.Equal(["Two corners so far. One more makes an outline.", "Type the depth: how far the tank runs on along the line of sight."], answer.Missing);
    }

    [Theory]
    [InlineData("crosses or touches", "0 0 300 250 300 0 0 250")]
    [InlineData("no area", "0 0 300 0 500 0")]
    [InlineData("lie in one place", "0 0 300 0 300 0 0 250")]
    [InlineData("3000", "0 0 3500 0 3500 200")]
    public void A_bad_outline_is_said_once_and_holds_nothing(string words, string places)
    {
        var answer = SketchAnalyst.Of(Box with { Corners = [.. places.Split(' ').Select(p => double.Parse(p, System.Globalization.CultureInfo.InvariantCulture)).Chunk(2).Select(p => new SketchCorner(p[0], p[1]))] });

        Assert.Null(answer.Tank);
        Assert.Contains(words, string.Join(' ', answer.Problems), StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_thicker_than_the_tank_is_refused()
    {
        var answer = SketchAnalyst.Of(new OutlineSketch { Corners = [new(0, 0), new(15, 0), new(15, 300), new(0, 300)], Depth = 300, Wall = 9 });

        Assert.Contains("nothing is left inside", Assert.Single(answer.Problems), StringComparison.Ordinal);
    }

    [Fact]
    public void A_longer_side_pushes_the_corners_beyond_until_a_facing_side_takes_it_up()
    {
        Assert.Equal([new(0, 0), new(523.5, 0), new(523.5, 250), new(0, 250)], Box.WithSide(0, 523.5).Corners);
        Assert.Equal([new(23.5, 0), new(523.5, 0), new(523.5, 250), new(23.5, 250)], Box.WithSide(0, 523.5).WithSide(2, 500).Corners);

        // A step: its tread faces the floor and gives way, the top stays as it is.
        OutlineSketch step = new() { Corners = [new(0, 0), new(400, 0), new(400, 100), new(300, 100), new(300, 200), new(0, 200)] };
        Assert.Equal([new(0, 0), new(450, 0), new(450, 100), new(300, 100), new(300, 200), new(0, 200)], step.WithSide(0, 450).Corners);
    }

    [Fact]
    public void Where_no_side_faces_it_the_far_corner_moves_alone()
    {
        OutlineSketch wedge = new() { Corners = [new(0, 0), new(400, 0), new(100, 300)] };

        Assert.Equal([new(0, 0), new(450, 0), new(100, 300)], wedge.WithSide(0, 450).Corners);
        Assert.Equal(450, wedge.WithSide(2, 450).Side(2), 0.1);
    }

    [Fact]
    public void Corners_are_put_in_and_taken_out()
    {
        var more = Box.WithCornerIn(3);

        Assert.Equal(new SketchCorner(0, 125), more.Corners[4]);
        Assert.Equal(Box.Corners, more.Without(4).Corners);
    }

    [Theory]
    [InlineData(OutlineView.Side)]
    [InlineData(OutlineView.Rear)]
    [InlineData(OutlineView.Plan)]
    public void A_sketch_comes_back_from_its_document(OutlineView view)
    {
        var sketch = new OutlineSketch { View = view, Corners = [new(0, 0, 25), new(412.5, 0), new(300, 220)], Depth = 275, Wall = 1.2, Name = "left", At = (10, 480, 40) };

        var back = SketchDocument.From(SketchDocument.New(sketch, "Tern"), "left")!;

        Assert.Equal(sketch.Corners, back.Corners);
        Assert.Equal(sketch with { Corners = [] }, back with { Corners = [] });
    }

    [Fact]
    public void Into_a_kept_document_it_takes_the_shape_of_its_namesake_and_leaves_the_rest()
    {
        var document = TankSamples.Tern.Document;

        var into = TankDocument.Read(SketchDocument.Into(document, SketchDocument.From(document, "left")! with { Depth = 300 })!).Set!;

        var before = TankDocument.Read(document).Set!;
        Assert.Equal(["left", "right"], into.Tanks.Select(t => t.Name), StringComparer.Ordinal);
        Assert.Equal(before.Tanks[0].PickUp, into.Tanks[0].PickUp);
        Assert.Equal(before.Tanks[0].Origin, into.Tanks[0].Origin);
        Assert.True(into.Tanks[0].CapacityLitres > before.Tanks[0].CapacityLitres + 2);
        Assert.Equal(before.Tanks[1].CapacityLitres, into.Tanks[1].CapacityLitres, 1e-9);
        Assert.Equal(before.Readings.Count, into.Readings.Count);
    }

    [Fact]
    public void A_tank_of_another_name_goes_beside_those_kept()
    {
        var into = SketchDocument.Into(TankSamples.Tern.Document, Box with { Name = "reserve", At = (500, 0, 0) })!;

        Assert.Equal([("left", true), ("right", true), ("reserve", true)], SketchDocument.Tanks(into));
        Assert.Equal(37.5, TankDocument.Read(into).Set!.Tanks[2].CapacityLitres, 1e-9);
        Assert.Null(SketchDocument.Into("{ nothing", Box));
    }
}
