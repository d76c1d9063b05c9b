using System.Globalization;
using System.Xml.Linq;
using CsCheck;
using Tickover.Reports.Mixture;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Tests.Mixture;

public sealed class MixturePictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    // The page's budget for one map
    private const int LargestText = 150_000;

    [Theory]
    [InlineData(PictureSize.Full, 772)]
    [InlineData(PictureSize.Phone, 366)]
    public void It_is_well_formed_small_enough_and_says_what_it_shows(PictureSize size, double width)
    {
        var text = MixturePicture.ToSvg(new MixtureView { Map = Maps.Typical(), BarrelNumber = 2, Size = size, Tapped = new MapSpot(2750, 11) });

        var svg = XDocument.Parse(text).Root!;
        Assert.True(text.Length < LargestText, $"{text.Length} characters");
        Assert.Equal("img", svg.Attribute("role")!.Value);
        Assert.StartsWith("Barrels 1 to 4. Too lean, ", svg.Attribute("aria-label")!.Value, StringComparison.Ordinal);
        Assert.StartsWith($"0 0 {width} ", svg.Attribute("viewBox")!.Value, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
        Assert.DoesNotContain("style=", text, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", text, StringComparison.Ordinal);
        Assert.All(svg.Descendants(Svg + "text"), t => Assert.True(double.Parse(t.Attribute("font-size")!.Value, CultureInfo.InvariantCulture) >= 14));
        Assert.All(svg.Descendants().Attributes("id"), id => Assert.StartsWith("mixture-", id.Value, StringComparison.Ordinal));
    }

    [Fact]
    public void Words_name_the_regions_the_circuits_and_why_there_is_no_answer()
    {
        var words = Words(new MixtureView { Map = Maps.Typical(), BarrelNumber = 1 });

        Assert.Contains("Too lean", words, StringComparer.Ordinal);
        Assert.Contains("Progression", words, StringComparer.Ordinal);
        Assert.Contains("Main", words, StringComparer.Ordinal);
        Assert.Contains("Main, corrector leaning", words, StringComparer.Ordinal);
        Assert.Contains("Engine is driven by the car here", words, StringComparer.Ordinal);
        Assert.Contains("1.00", words, StringComparer.Ordinal);
    }

    [Fact]
    public void A_tap_comes_back_as_speed_and_opening_by_the_data_attributes()
    {
        var view = new MixtureView { Map = Maps.Typical(), BarrelNumber = 1 };
        var svg = XDocument.Parse(MixturePicture.ToSvg(view)).Root!;
        double Data(string name) => double.Parse(svg.Attribute($"data-{name}")!.Value, CultureInfo.InvariantCulture);
        var place = MapFrame.For(view.Map.Grid, view.Size).Place(new MapSpot(2750, 11));

        var rpm = Data("x-from") + (place.X - Data("plot-left")) / Data("plot-width") * (Data("x-to") - Data("x-from"));
        var up = (Data("plot-top") + Data("plot-height") - place.Y) / Data("plot-height");
        var root = Math.Sqrt(Data("y-from")) + up * (Math.Sqrt(Data("y-to")) - Math.Sqrt(Data("y-from")));

        Assert.Equal("sqrt", svg.Attribute("data-y-scale")!.Value);
        Assert.Equal(2750, rpm, 0.01);
        Assert.Equal(11, root * root, 0.01);
    }

    [Fact]
    public void A_measured_point_off_by_more_than_its_band_is_a_diamond_with_its_figure()
    {
        MixtureView With(double off) => new()
        {
            Map = Maps.Typical(),
            BarrelNumber = 1,
            Measured = [new MeasuredPoint(new MapSpot(3500, 30), 0.95 + off, 20) { Expected = 0.95, Half = 0.03 }],
        };

        Assert.Contains("+0.05", Words(With(0.05)), StringComparer.Ordinal);
        Assert.Contains("−0.04", Words(With(-0.04)), StringComparer.Ordinal);
        Assert.DoesNotContain(Words(With(0.02)), w => w.StartsWith('+') || w.StartsWith('−'));
    }

    [Fact]
    public void A_map_without_any_answer_is_hatched_and_says_so()
    {
        var view = new MixtureView { Map = Maps.Of((_, _) => Maps.Point(1.9, PointValidity.TooLeanToRun)), BarrelNumber = 1 };

        Assert.Equal("Barrels 1 to 4. No answer anywhere: the engine does not run here.", MixturePicture.Sentence(view));
        Assert.Contains("Too lean to run", Words(view), StringComparer.Ordinal);
        Assert.DoesNotContain("clip-path", MixturePicture.ToSvg(view), StringComparison.Ordinal);
    }

    [Fact]
    public void A_map_on_target_has_no_word_of_lean_or_rich()
    {
        var view = new MixtureView
        {
            Map = Maps.Of((_, opening) => MixtureTargets.At(opening) is var t ? Maps.Point((t.Richest + t.Leanest) / 2) : default),
            BarrelNumber = 1,
        };

        Assert.DoesNotContain("Too lean", Words(view), StringComparer.Ordinal);
        Assert.DoesNotContain("Too rich", Words(view), StringComparer.Ordinal);
        Assert.Equal("Barrels 1 to 4. Within the target wherever the engine runs.", MixturePicture.Sentence(view));
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(1, 5)]
    [InlineData(6, 1)]
    [InlineData(2, 2)]
    public void A_grid_of_one_speed_or_opening_is_still_drawn(int speeds, int openings)
    {
        var map = Maps.Of((_, _) => Maps.Point(0.9), speeds, openings);

        Assert.NotNull(XDocument.Parse(MixturePicture.ToSvg(new MixtureView { Map = map, BarrelNumber = 1 })).Root);
    }

    [Fact]
    public void Whatever_the_points_hold_the_drawing_is_sound() =>
        Gen.Select(Gen.Double[-1, 4], Gen.Int[0, 511], Gen.Int[0, 3], Gen.Int[0, 12]).Array[30].Sample(
            cells =>
            {
                var k = 0;
                var map = Maps.Of((_, _) => Wild(cells[k++]), 6, 5);
                var text = MixturePicture.ToSvg(new MixtureView { Map = map, BarrelNumber = 1, Tapped = new MapSpot(1e5, -4) });
                Assert.NotNull(XDocument.Parse(text).Root);
                Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
                Assert.DoesNotContain("Infinity", text, StringComparison.Ordinal);
            },
            iter: 60);

    [Fact]
    public void Measured_points_are_filled_by_what_was_measured_and_sized_by_count()
    {
        var view = new MixtureView
        {
            Map = Maps.Typical(),
            BarrelNumber = 1,
            Scale = new LambdaScale(0.8, 1.1),
            Measured = [new(new MapSpot(2000, 30), 1.1, 120), new(new MapSpot(3000, 60), 0.8, 6), new(new MapSpot(9000, 10), 1, 5)],
        };

        var circles = XDocument.Parse(MixturePicture.ToSvg(view)).Descendants(Svg + "circle").ToArray();
        double Radius(string fill) => double.Parse(Assert.Single(circles, c => c.Has("fill", fill)).Attribute("r")!.Value, CultureInfo.InvariantCulture);

        Assert.True(Radius("#fee838") > Radius("#00224e"));
    }

    [Fact]
    public void The_table_holds_every_point_with_its_verdict()
    {
        var table = MixturePicture.TableFor(new MixtureView { Map = Maps.Typical(), BarrelNumber = 1 });

        Assert.Equal(25, table.Columns.Count);
        Assert.Equal(16, table.Rows.Count);
        Assert.All(table.Rows, r => Assert.Equal(25, r.Count));
        Assert.Contains(table.Rows.SelectMany(r => r), c => c.EndsWith(" lean", StringComparison.Ordinal));
        Assert.Contains(table.Rows.SelectMany(r => r), c => string.Equals(c, "Driven by the car", StringComparison.Ordinal));
    }

    [Fact]
    public void Fitted_and_trial_share_a_scale_within_what_is_shown()
    {
        var scale = LambdaScale.For(Maps.Of((_, _) => Maps.Point(0.5)).ForBarrel(1), Maps.Of((_, _) => Maps.Point(1.7)).ForBarrel(1));
        var flat = LambdaScale.For(Maps.Of((_, _) => Maps.Point(0.9)).ForBarrel(1));

        Assert.Equal(0.70, scale.Richest, 1e-9);
        Assert.Equal(1.30, scale.Leanest, 1e-9);
        Assert.True(flat.Leanest - flat.Richest >= 0.0999);
        Assert.Equal(new LambdaScale(0.70, 1.30), LambdaScale.For());
    }

    private static BarrelPoint Wild((double Lambda, int Flags, int Feeding, int Broken) cell) =>
        Maps.Point(cell.Lambda, (PointValidity)cell.Flags, (FuelCircuit)cell.Feeding) with
        {
            Lambda = cell.Broken switch { 0 => double.NaN, 1 => double.PositiveInfinity, _ => cell.Lambda },
            WellDropMetres = cell.Broken == 2 ? double.NaN : 0.01 * cell.Lambda,
            BrakeMeanPressurePascals = cell.Broken == 3 ? double.NegativeInfinity : 1e5 * cell.Lambda,
            MainFuelKilogramsPerSecond = cell.Broken == 4 ? 0 : 1e-4,
            IdleFuelKilogramsPerSecond = cell.Broken == 4 ? 0 : 1e-5 * cell.Feeding,
            ProgressionFuelKilogramsPerSecond = 0,
        };

    private static string[] Words(MixtureView view) =>
        [.. XDocument.Parse(MixturePicture.ToSvg(view)).Descendants(Svg + "text").Select(t => t.Value)];
}
