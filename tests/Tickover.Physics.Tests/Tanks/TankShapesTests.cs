using Tickover.Physics.Linkages;
using Tickover.Physics.Tanks;

namespace Tickover.Physics.Tests.Tanks;

public sealed class TankShapesTests
{
    [Theory]
    [InlineData(HeadKind.Ellipse, CylinderLie.Across)]
    [InlineData(HeadKind.Dish, CylinderLie.Along)]
    [InlineData(HeadKind.Cone, CylinderLie.Standing)]
    public void A_round_tank_holds_exactly_what_the_formulas_say(HeadKind head, CylinderLie lie)
    {
        const double r = 0.15, a = 0.06, length = 0.5;
        var tank = TankShapes.Cylinder(new RoundTank { DiameterMetres = 2 * r, LengthMetres = length, HeadMetres = a, Head = head, Lie = lie }).Shape!;

        var heads = head switch
        {
            HeadKind.Ellipse => 4.0 / 3 * Math.PI * r * r * a,
            HeadKind.Dish => Math.PI * a / 3 * (3 * r * r + a * a),
            _ => 2.0 / 3 * Math.PI * r * r * a,
        };
        Assert.Equal(Math.PI * r * r * length + heads, tank.VolumeCubicMetres, 1e-13);
    }

    [Fact]
    public void A_ball_is_a_cylinder_of_no_length()
    {
        var ball = TankShapes.Cylinder(new RoundTank { DiameterMetres = 1, LengthMetres = 0, HeadMetres = 0.5 }).Shape!;

        Assert.Equal(0.4105014401, ball.Below(0.2, default).VolumeCubicMetres, 2e-4 * 0.41);
        Assert.Equal(Math.PI, ball.WallSquareMetres, 0.003);
    }

    [Fact]
    public void Box_less_its_wall_is_smaller_on_every_side()
    {
        var box = TankShapes.Box(new SpaceVector(0.6, 0.3, 0.2), 0.01).Shape!;

        Assert.Equal(0.58 * 0.28 * 0.18, box.VolumeCubicMetres, 1e-14);
        Assert.Equal(0.01, box.Lowest.Z, 1e-14);
    }

    [Fact]
    public void A_rounded_corner_takes_its_sliver()
    {
        var tank = TankShapes.Prism([new(0, 0, 0.1), new(0.5, 0), new(0.5, 0.3), new(0, 0.3)], 1, OutlineView.Rear).Shape!;

        Assert.Equal(0.15 - (1 - Math.PI / 4) * 0.01, tank.VolumeCubicMetres, 3e-5);
    }

    [Fact]
    public void Either_way_round_makes_the_same_tank()
    {
        OutlinePoint[] outline = [new(0, 0), new(0.5, 0), new(0.4, 0.3), new(0, 0.2)];

        foreach (var view in Enum.GetValues<OutlineView>())
        {
            var (one, other) = (TankShapes.Prism(outline, 0.4, view).Shape!, TankShapes.Prism([.. outline.Reverse()], 0.4, view).Shape!);
            Assert.Equal(0.4 * 0.115, one.VolumeCubicMetres, 1e-12);
            Assert.Equal(one.VolumeCubicMetres, other.VolumeCubicMetres, 1e-14);
        }
    }

    [Fact]
    public void A_notch_and_a_cut_out_are_the_same_tank()
    {
        var notched = TankShapes.Prism([new(-0.3, 0), new(-0.1, 0), new(-0.1, 0.1), new(0.1, 0.1), new(0.1, 0), new(0.3, 0), new(0.3, 0.2), new(-0.3, 0.2)], 0.3, OutlineView.Side).Shape!;
        var cut = TankShapes.Cut(TankShapes.Box(new SpaceVector(0.6, 0.3, 0.2)).Shape!, [TankShapes.Box(new SpaceVector(0.2, 0.5, 0.2)).Shape!.Moved(new SpaceVector(0, 0, -0.1))]).Shape!;

        var tilt = new Tilt(0.2, 0.15);
        foreach (var level in new[] { 0.01, 0.06, 0.1, 0.15, 0.3 })
        {
            var (a, b) = (notched.Below(level, tilt), cut.Below(level, tilt));
            Assert.Equal(a.VolumeCubicMetres, b.VolumeCubicMetres, 1e-13);
            Assert.Equal(a.WettedSquareMetres, b.WettedSquareMetres, 1e-12);
            Assert.Equal(a.SurfaceSquareMetres, b.SurfaceSquareMetres, 1e-12);
            Assert.True((a.Centroid!.Value - b.Centroid!.Value).Length < 1e-12);
        }
    }

    [Fact]
    public void A_tunnel_right_through_adds_its_own_wall()
    {
        var box = TankShapes.Box(new SpaceVector(0.6, 0.3, 0.2)).Shape!;
        var pipe = TankShapes.Cylinder(new RoundTank { DiameterMetres = 0.1, LengthMetres = 0.5 }).Shape!.Moved(new SpaceVector(0, 0, 0.1));

        var cut = TankShapes.Cut(box, [pipe]).Shape!;

        Assert.Equal(box.VolumeCubicMetres - Math.PI / 4 * 0.01 * 0.3, cut.VolumeCubicMetres, 1e-12);
        Assert.Equal(box.WallSquareMetres + Math.PI * 0.1 * 0.3 - 2 * Math.PI / 4 * 0.01, cut.WallSquareMetres, 1e-4);
    }

    [Fact]
    public void Crossing_outline_is_named_by_its_corners()
    {
        var result = TankShapes.Prism([new(0, 0), new(0.5, 0.3), new(0.5, 0), new(0, 0.3)], 0.4, OutlineView.Side);

        Assert.Null(result.Shape);
        Assert.Contains("crosses or touches itself: the side from corner 1 meets the side from corner 3", result.Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 0.3, 0.2, "length is above zero")]
    [InlineData(0.5, -0.3, 0.2, "width is above zero")]
    [InlineData(0.5, 0.3, double.NaN, "height is above zero")]
    [InlineData(500, 0.3, 0.2, "at most 10 m")]
    public void A_box_without_room_is_refused(double x, double y, double z, string words) =>
        Assert.Contains(words, TankShapes.Box(new SpaceVector(x, y, z)).Problem, StringComparison.Ordinal);

    [Fact]
    public void Outlines_without_area_or_with_doubled_corners_are_refused()
    {
        Assert.Contains("3 to 400 corners", TankShapes.Prism([new(0, 0), new(1, 0)], 1, OutlineView.Side).Problem, StringComparison.Ordinal);
        Assert.Contains("lie in one place", TankShapes.Prism([new(0, 0), new(0, 0), new(1, 0), new(1, 1)], 1, OutlineView.Side).Problem, StringComparison.Ordinal);
        Assert.NotNull(TankShapes.Prism([new(0, 0), new(1, 0), new(0.5, 0)], 1, OutlineView.Side).Problem);
        Assert.Contains("radii do not fit", TankShapes.Prism([new(0, 0, 0.3), new(0.5, 0, 0.3), new(0.5, 0.5), new(0, 0.5)], 1, OutlineView.Side).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Cut_outs_that_miss_overlap_or_swallow_the_tank_are_refused()
    {
        var box = TankShapes.Box(new SpaceVector(0.6, 0.3, 0.2)).Shape!;
        var small = TankShapes.Box(new SpaceVector(0.1, 0.1, 0.1)).Shape!;

        Assert.Contains("lies outside", TankShapes.Cut(box, [small.Moved(new SpaceVector(2, 0, 0))]).Problem, StringComparison.Ordinal);
        Assert.Contains("lies outside", TankShapes.Cut(box, [small.Moved(new SpaceVector(0.35, 0, 0))]).Problem, StringComparison.Ordinal);
        Assert.Contains("Cut-out 2 and cut-out 1 overlap", TankShapes.Cut(box, [small, small.Moved(new SpaceVector(0.05, 0, 0))]).Problem, StringComparison.Ordinal);
        Assert.Contains("leave nothing", TankShapes.Cut(box, [TankShapes.Box(new SpaceVector(1, 1, 1)).Shape!.Moved(new SpaceVector(0, 0, -0.4))]).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_dented_tank_takes_cut_outs_within_it_only()
    {
        var dented = TankShapes.Prism([new(-0.3, 0), new(-0.1, 0), new(-0.1, 0.1), new(0.1, 0.1), new(0.1, 0), new(0.3, 0), new(0.3, 0.2), new(-0.3, 0.2)], 0.3, OutlineView.Side).Shape!;
        var small = TankShapes.Box(new SpaceVector(0.1, 0.1, 0.05)).Shape!;

        var cut = TankShapes.Cut(dented, [small.Moved(new SpaceVector(-0.2, 0, 0))]).Shape!;

        Assert.Equal(dented.VolumeCubicMetres - 0.0005, cut.VolumeCubicMetres, 1e-14);
        Assert.Equal(dented.WallSquareMetres + 4 * 0.1 * 0.05, cut.WallSquareMetres, 1e-12);
        Assert.Contains("sticks out", TankShapes.Cut(dented, [small.Moved(new SpaceVector(-0.1, 0, 0))]).Problem, StringComparison.Ordinal);
    }
}
