using Tickover.Reports.Charts;

namespace Tickover.Reports.Tests.Charts;

public sealed class LabelTests
{
    private static readonly Field Grid = new(Refinement.Even(0, 700, 142), Refinement.Even(0, 480, 96), new double[142, 96]);

    [Fact]
    public void A_label_goes_where_its_region_has_most_room()
    {
        // An L: a narrow leg at the left, a wide foot at the bottom right
        var placer = new RegionPlacer(Grid, (i, j) => i < 12 || (j > 60 && i > 30));

        var box = placer.Find(100, 24, new LabelBoard(new Box(0, 0, 700, 480)));

        Assert.NotNull(box);
        Assert.InRange(box.Value.Centre.X, 250, 600);
        Assert.InRange(box.Value.Centre.Y, 340, 440);
    }

    [Fact]
    public void A_label_keeps_off_what_is_taken_and_out_of_regions_too_small()
    {
        var board = new LabelBoard(new Box(0, 0, 700, 480));
        var whole = new RegionPlacer(Grid, (_, _) => true);
        var first = whole.Find(200, 100, board)!.Value;
        board.Take(first);

        var second = whole.Find(200, 100, board)!.Value;

        Assert.False(first.Overlaps(second));
        Assert.Null(new RegionPlacer(Grid, (i, j) => i < 4 && j < 4).Find(200, 100, board));
        Assert.Null(new RegionPlacer(Grid, (_, _) => false).Find(20, 10, board));
    }

    [Fact]
    public void A_figure_stands_on_its_line_within_the_answers()
    {
        var line = new Polyline([new(0, 100), new(350, 100), new(350, 400)], Closed: false);

        var box = ContourLabels.Find(line, (40, 15), new LabelBoard(new Box(0, 0, 700, 480)), p => p.X > 60);

        Assert.NotNull(box);
        Assert.Equal(100, box.Value.Centre.Y, 1e-9);
        Assert.InRange(box.Value.Left, 60, 330);
        Assert.Null(ContourLabels.Find(line, (40, 15), new LabelBoard(new Box(0, 0, 700, 480)), _ => false));
    }

    [Fact]
    public void The_map_grows_lighter_from_rich_to_lean_and_the_change_is_nearly_white_in_the_middle()
    {
        static double Light((byte R, byte G, byte B) c) => 0.2126 * c.R + 0.7152 * c.G + 0.0722 * c.B;
        var steps = Enumerable.Range(0, 65).Select(k => Light(Cividis.At(k / 64.0))).ToArray();

        Assert.All(steps.Zip(steps.Skip(1)), s => Assert.True(s.Second >= s.First));
        Assert.Equal("#00224e", Cividis.PaintAt(-3).Name);
        Assert.Equal("#fee838", Cividis.PaintAt(7).Name);
        Assert.Equal("#f4f4f2", Diverging.PaintAt(0).Name);
        Assert.Equal("#0072b2", Diverging.PaintAt(-1).Name);
        Assert.Equal("#d55e00", Diverging.PaintAt(2).Name);
    }
}
