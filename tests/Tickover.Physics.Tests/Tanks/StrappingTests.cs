using Tickover.Physics.Linkages;
using Tickover.Physics.Tanks;

namespace Tickover.Physics.Tests.Tanks;

public sealed class StrappingTests
{
    private static readonly TankShape Wedge = TankShapes.Prism([new(-0.3, 0), new(0.2, 0), new(0.35, 0.25), new(-0.3, 0.25)], 0.4, OutlineView.Side).Shape!;
    private static readonly SpaceVector Foot = new(-0.1, 0.05, 0);

    [Fact]
    public void Table_of_a_shape_goes_both_ways()
    {
        var table = StrappingTable.Of(Wedge, Foot)!;

        foreach (var dip in new[] { 0.01, 0.1, 0.2, 0.24 })
        {
            var exact = Wedge.Below(dip, default).VolumeCubicMetres;
            Assert.Equal(exact, table.VolumeAt(dip), 1e-7);
            Assert.Equal(dip, table.DipAt(exact), 1e-5);
        }

        Assert.Equal(Wedge.VolumeCubicMetres, table.LastVolumeCubicMetres, 1e-12);
    }

    [Fact]
    public void A_stick_on_the_high_side_starts_with_fuel_it_cannot_see()
    {
        var table = StrappingTable.Of(Wedge, Foot, Tilt.Standing(0.05, 0))!;

        Assert.Equal(0, table.Steps[0].DipMetres, 1e-12);
        Assert.True(table.Steps[0].VolumeCubicMetres > 0.0002);
    }

    [Fact]
    public void Fills_that_turn_back_name_their_step()
    {
        Assert.Contains("Step 3", StrappingTable.FromFill([new(0, 0), new(0.005, 0.03), new(0.01, 0.03)]).Problem, StringComparison.Ordinal);
        Assert.Contains("Step 2", StrappingTable.FromFill([new(0.005, 0.01), new(0.005, 0.03)]).Problem, StringComparison.Ordinal);
        Assert.Contains("zero or more", StrappingTable.FromFill([new(-0.005, 0.01), new(0.005, 0.03)]).Problem, StringComparison.Ordinal);
        Assert.NotNull(StrappingTable.FromFill([new(0.005, 0.01)]).Problem);
    }

    [Fact]
    public void A_curve_never_turns_back_between_its_points()
    {
        var curve = MonotoneCurve.Through([(0, 0), (1, 0.1), (2, 5), (3, 5.1), (4, 9)])!;

        var last = double.NegativeInfinity;
        for (var x = 0.0; x <= 4; x += 0.01)
        {
            Assert.True(curve.At(x) >= last - 1e-12);
            last = curve.At(x);
        }

        Assert.Equal(1.7, curve.Where(curve.At(1.7)), 1e-9);
        Assert.Null(MonotoneCurve.Through([(0, 0), (1, 2), (2, 1)]));
    }

    [Fact]
    public void A_fill_that_fits_the_shape_agrees_with_it()
    {
        var table = StrappingTable.Of(Wedge, Foot)!;
        FillStep[] steps = [.. Enumerable.Range(1, 8).Select(i => new FillStep(0.005 * i, Math.Round(table.DipAt(0.005 * i), 3)))];

        var fit = FillFit.Of(Wedge, Foot, steps);

        Assert.Equal(FillVerdict.Agree, fit.Verdict);
        Assert.All(fit.Lines, l => Assert.Equal(l.Read.PouredCubicMetres, l.FittedCubicMetres, 3 * l.BandCubicMetres + 0.0004));
    }

    [Fact]
    public void A_tank_that_holds_more_than_drawn_is_found_with_its_part()
    {
        var table = StrappingTable.Of(Wedge, Foot)!;
        FillStep[] steps = [.. Enumerable.Range(1, 9).Select(i => new FillStep(0.005 * i, table.DipAt(0.005 * i / 1.12)))];

        var fit = FillFit.Of(Wedge, Foot, steps);

        Assert.Equal(FillVerdict.AgreeSetRight, fit.Verdict);
        var scale = fit.Unknowns[(int)FillUnknownKind.Scale];
        Assert.True(scale.Unusual);
        Assert.Equal(0.12, scale.Value, 2.5 * scale.Deviation);
        Assert.Equal(table.VolumeAt(0.2) * 1.12, fit.Table!.VolumeAt(0.2), 0.03 * table.VolumeAt(0.2));
    }

    [Fact]
    public void A_misread_step_stands_out_and_pulls_the_others_little()
    {
        var table = StrappingTable.Of(Wedge, Foot)!;
        FillStep[] steps = [.. Enumerable.Range(1, 9).Select(i => new FillStep(0.005 * i, table.DipAt(0.005 * i) + (i == 5 ? 0.02 : 0)))];

        var fit = FillFit.Of(Wedge, Foot, steps);

        Assert.Equal([4], fit.Lines.Select((l, i) => (l, i)).Where(p => p.l.StandsOut).Select(p => p.i));
        Assert.All(fit.Lines.Where(l => !l.StandsOut), l => Assert.Equal(l.Read.DipMetres, l.FittedDipMetres, 0.003));
    }
}
