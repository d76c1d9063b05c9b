using CsCheck;
using Tickover.Physics.Linkages;
using Tickover.Physics.Tanks;

namespace Tickover.Physics.Tests.Tanks;

public sealed class TankLevelTests
{
    private static readonly OutlinePoint[] Dented = [new(0, 0), new(0.5, 0), new(0.5, 0.3), new(0.3, 0.3), new(0.3, 0.15), new(0.2, 0.15), new(0.2, 0.3), new(0, 0.25, 0.04)];

    private static readonly TankShape[] Shapes =
    [
        TankShapes.Box(new SpaceVector(0.6, 0.3, 0.2)).Shape!,
        TankShapes.Prism(Dented, 0.4, OutlineView.Side).Shape!,
        TankShapes.Prism(Dented, 0.4, OutlineView.Rear, 0.0012).Shape!,
        TankShapes.Cylinder(new RoundTank { DiameterMetres = 0.3, LengthMetres = 0.5, HeadMetres = 0.06 }).Shape!,
        TankShapes.Cylinder(new RoundTank { DiameterMetres = 0.3, LengthMetres = 0.2, HeadMetres = 0.05, Head = HeadKind.Dish, Lie = CylinderLie.Standing }).Shape!,
        TankShapes.Cut(TankShapes.Box(new SpaceVector(0.6, 0.3, 0.2)).Shape!, [TankShapes.Box(new SpaceVector(0.2, 0.4, 0.1)).Shape!]).Shape!,
    ];

    private static readonly Gen<(TankShape Shape, Tilt Tilt, double Part)> Any = Gen.Select(
        Gen.Int[0, 5], Gen.Double[-0.8, 0.8], Gen.Double[-0.8, 0.8], Gen.Double[0.01, 0.99],
        (shape, ahead, left, part) => (Shapes[shape], new Tilt(ahead, left), part));

    [Fact]
    public void Level_of_a_volume_holds_that_volume() => Any.Sample(c =>
    {
        var tank = c.Shape.At(c.Tilt);
        var volume = c.Part * c.Shape.VolumeCubicMetres;

        Assert.Equal(volume, tank.Below(tank.Filled(volume)).VolumeCubicMetres, 1e-12 * c.Shape.VolumeCubicMetres + 1e-15);
        Assert.Equal(volume, tank.VolumeBelow(tank.Filled(volume)), 1e-12 * c.Shape.VolumeCubicMetres + 1e-15);
    }, iter: 30);

    [Fact]
    public void What_is_below_from_either_side_makes_the_whole() => Any.Sample(c =>
    {
        var turned = new TankShape([.. c.Shape.Facets.Select(f => new TankFacet(-1 * f.A, -1 * f.C, -1 * f.B, f.Share))]);
        var (tank, upsideDown) = (c.Shape.At(c.Tilt), turned.At(c.Tilt));
        var level = tank.Lowest + c.Part * (tank.Highest - tank.Lowest);

        Assert.Equal(c.Shape.VolumeCubicMetres, tank.VolumeBelow(level) + upsideDown.VolumeBelow(-level), 1e-13);
        Assert.Equal(c.Shape.WallSquareMetres, tank.Below(level).WettedSquareMetres + upsideDown.Below(-level).WettedSquareMetres, 1e-12);
    }, iter: 30);

    [Fact]
    public void Free_surface_is_the_rate_of_the_volume() => Any.Sample(c =>
    {
        var tank = c.Shape.At(c.Tilt);
        var level = tank.Lowest + c.Part * (tank.Highest - tank.Lowest);
        const double step = 1e-7;
        var rate = (tank.VolumeBelow(level + step) - tank.VolumeBelow(level - step)) / (2 * step);
        var (low, high) = (tank.Below(level - step).SurfaceSquareMetres, tank.Below(level + step).SurfaceSquareMetres);

        Assert.InRange(rate, Math.Min(low, high) - 1e-5, Math.Max(low, high) + 1e-5);
    }, iter: 30);

    [Fact]
    public void Work_of_lifting_is_the_height_of_the_centroid() => Any.Sample(c =>
    {
        // d(V·h)/dc = A·c: the middle of the fuel against the sum of thin layers.
        var tank = c.Shape.At(c.Tilt);
        var top = tank.Lowest + c.Part * (tank.Highest - tank.Lowest);
        const int layers = 400;
        var moment = 0.0;
        for (var i = 0; i < layers; i++)
        {
            var (from, to) = (tank.Lowest + (top - tank.Lowest) * i / layers, tank.Lowest + (top - tank.Lowest) * (i + 1) / layers);
            moment += (tank.VolumeBelow(to) - tank.VolumeBelow(from)) * (from + to) / 2;
        }

        var below = tank.Below(top);
        Assert.Equal(moment / below.VolumeCubicMetres, c.Tilt.HeightOf(below.Centroid!.Value), 1e-5);
    }, iter: 20);

    [Fact]
    public void Centroid_of_a_full_box_is_its_middle()
    {
        var box = Shapes[0].Moved(new SpaceVector(1, 2, 3));

        var full = box.Below(10, new Tilt(0.3, -0.2));

        Assert.True((full.Centroid!.Value - box.Middle).Length < 1e-12);
        Assert.Equal(2 * (0.6 * 0.3 + 0.6 * 0.2 + 0.3 * 0.2), full.WettedSquareMetres, 1e-12);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(1)]
    [InlineData(1.5)]
    [InlineData(2)]
    [InlineData(2.5)]
    public void A_cube_on_its_corner_follows_the_formula(double t)
    {
        var cube = TankShapes.Box(new SpaceVector(1, 1, 1)).Shape!.Moved(new SpaceVector(0.5, 0.5, 0));

        Assert.Equal(PartialVolumes.CubeCorner(t), cube.Below(t / Math.Sqrt(3), new Tilt(1, 1)).VolumeCubicMetres, 1e-14);
    }

    [Fact]
    public void A_pushed_box_piles_its_fuel_up_on_the_outside()
    {
        // 0.60 m wide, 0.08 m deep, 1 m/s² to the left: 0.0494 m on the left, 0.1106 m on the right.
        var box = TankShapes.Box(new SpaceVector(0.5, 0.6, 0.2)).Shape!;
        var tilt = Tilt.Pushed(0, 1, 9.81);
        var level = box.Filled(0.5 * 0.6 * 0.08, tilt);

        Assert.Equal(0.0494, tilt.DepthOver(level, new SpaceVector(0, 0.3, 0)), 1e-4);
        Assert.Equal(0.1106, tilt.DepthOver(level, new SpaceVector(0, -0.3, 0)), 1e-4);
    }

    [Fact]
    public void Level_of_a_stick_is_the_way_back_from_its_depth()
    {
        var tilt = new Tilt(0.2, -0.1);
        var foot = new SpaceVector(0.1, 0.2, 0.03);

        Assert.Equal(0.123, tilt.DepthOver(tilt.LevelAt(0.123, foot), foot), 1e-14);
    }

    [Fact]
    public void Pick_up_at_the_back_leaves_more_fuel_with_the_nose_down()
    {
        var box = Shapes[0];
        var pickUp = new PickUp(new SpaceVector(-0.25, 0, 0.01), 0.003);

        var (level, down) = (pickUp.Unusable(box.At(default)), pickUp.Unusable(box.At(Tilt.Standing(-0.1, 0))));

        Assert.Equal(0.6 * 0.3 * 0.013, level, 1e-12);
        Assert.True(down > 2 * level);
    }

    [Fact]
    public void Two_joined_tanks_share_one_level()
    {
        var (left, right) = (Shapes[0].Moved(new SpaceVector(0, 0.5, 0)), Shapes[0].Moved(new SpaceVector(0, -0.5, 0.05)));
        var both = left.With(right);

        Assert.Equal(0.6 * 0.3 * (0.1 + 0.05), both.Below(0.1, default).VolumeCubicMetres, 1e-14);
    }
}
