using System.Globalization;
using System.Xml.Linq;
using CsCheck;
using Tickover.Reports.Mixture;
using Tickover.Reports.Section;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Tests.Section;

public sealed class BarrelSectionPictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Theory]
    [InlineData(PictureSize.Full, "Main jet, 135")]
    [InlineData(PictureSize.Phone, "3, Main jet, 135")]
    public void Every_part_can_be_reached_read_and_touched(PictureSize size, string name)
    {
        var view = new BarrelSectionView { Car = Car(), BarrelNumber = 1, Size = size, SelectedKey = "barrel.mainJet" };

        var svg = XDocument.Parse(BarrelSectionPicture.ToSvg(view)).Root!;
        var parts = svg.Descendants(Svg + "g").Where(g => g.Has("tabindex", "0")).ToArray();

        Assert.Equal(BarrelSectionPicture.Parts(view).Select(p => p.Key), parts.Select(p => p.Attribute("data-part")!.Value), StringComparer.Ordinal);
        Assert.All(parts, p => Assert.Equal("button", p.Attribute("role")!.Value));
        Assert.Contains(parts, p => p.Has("aria-label", name) && p.Has("aria-pressed", "true"));
        var scale = size == PictureSize.Full ? 772 / 862.0 : 366 / 632.0;
        Assert.All(parts, p => Assert.Contains(p.Elements(Svg + "rect"), r => Number(r, "width") * scale >= 48 && Number(r, "height") * scale >= 48));
        Assert.All(svg.Descendants(Svg + "text"), t => Assert.True(Number(t, "font-size") * scale >= 14));
        Assert.DoesNotContain("style=", svg.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_are_links_where_the_page_gives_addresses()
    {
        var view = new BarrelSectionView { Car = Car(), BarrelNumber = 1, PartAddress = key => $"/jets?part={key}&x=1" };

        var links = XDocument.Parse(BarrelSectionPicture.ToSvg(view)).Descendants(Svg + "a").ToArray();

        Assert.Contains(links, l => l.Has("href", "/jets?part=barrel.choke&x=1") && l.Attribute("aria-label") is not null);
        Assert.All(links.Where(l => l.Attribute("aria-hidden") is not null), l => Assert.Equal("-1", l.Attribute("tabindex")!.Value));
    }

    [Fact]
    public void A_trial_size_stands_behind_an_arrow()
    {
        var view = new BarrelSectionView
        {
            Car = Car(),
            BarrelNumber = 1,
            Trial = Car(("idleJet", 0.00055), ("choke", 0.033), ("screwTurns", 1.5)),
        };

        var sizes = BarrelSectionPicture.Parts(view).ToDictionary(p => p.Key, p => p.Size, StringComparer.Ordinal);

        Assert.Equal("50 → 55", sizes["barrel.idleJet"]);
        Assert.Equal("34 → 33\u202Fmm", sizes["barrel.choke"]);
        Assert.Equal("2¼ → 1½ out", sizes["barrel.screwTurns"]);
        Assert.Equal("135", sizes["barrel.mainJet"]);
    }

    [Fact]
    public void The_seated_plate_touches_the_wall_at_its_closed_angle_and_opens_upwards()
    {
        var seated = new SectionGeometry(View(0));
        var open = new SectionGeometry(View(11));

        Assert.Equal(seated.SeatedEdgeY, seated.EdgeY, 1e-9);
        Assert.Equal(80, seated.PlateReach * Math.Cos(seated.PlateAngle), 1e-9);
        // R (sin 18° − sin 7°) / cos 7° = 22.5 × 0.18856 = 4.243 mm, at 160 units to 45 mm
        Assert.Equal(4.243 * 160 / 45, seated.EdgeY - open.EdgeY, 0.01);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(4, 1)]
    [InlineData(11, 3)]
    [InlineData(80, 3)]
    public void The_edge_passes_the_holes_one_by_one(double opening, int passed)
    {
        // Holes 0.8, 2.2 and 3.8 mm above the seated edge; at 4° it has risen 22.5 (sin 11° − sin 7°)/cos 7° = 1.56 mm
        var sentence = BarrelSectionPicture.Sentence(View(opening));

        Assert.EndsWith($"plate's edge past {passed} of 3 progression holes.", sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void The_well_stands_at_the_computed_level_and_at_rest_without_a_point()
    {
        var rest = new SectionGeometry(View(5));
        var running = new SectionGeometry(View(5) with { Point = new BarrelPoint { WellDropMetres = 0.010 } });
        var drained = new SectionGeometry(View(5) with { Point = new BarrelPoint { WellDropMetres = 1 } });

        Assert.Equal(rest.LevelY, rest.WellLevelY, 1e-9);
        Assert.Equal(running.WellY(0.010), running.WellLevelY, 1e-9);
        Assert.Equal(drained.JetTop, drained.WellLevelY, 1e-9);
    }

    [Fact]
    public void Whatever_the_figures_the_drawing_is_sound() =>
        Gen.Select(Gen.Double[0, 0.2], Gen.Double[-0.01, 0.12], Gen.Double[-10, 120]).Sample((any, other, opening) =>
        {
            var car = Car(("choke", any), ("floatLevel", other), ("wellDepth", any), ("screwTurns", any * 50), ("spindleDiameter", any));
            var text = BarrelSectionPicture.ToSvg(new BarrelSectionView { Car = car, BarrelNumber = 1, ThrottleDegrees = opening });
            Assert.NotNull(XDocument.Parse(text).Root);
            Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
        });

    [Fact]
    public void A_barrel_the_car_does_not_have_is_named_in_the_complaint() =>
        Assert.Contains("1 to 1", Assert.Throws<InvalidOperationException>(
            () => BarrelSectionPicture.ToSvg(new BarrelSectionView { Car = Car(), BarrelNumber = 9 })).Message, StringComparison.Ordinal);

    private static BarrelSectionView View(double opening) => new() { Car = Car(), BarrelNumber = 1, ThrottleDegrees = opening };

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    private static Car Car(params (string Name, double Si)[] changes)
    {
        (string Name, double Si)[] usual =
        [
            ("throttleBore", 0.045), ("closedAngle", 7 * Math.PI / 180), ("spindleDiameter", 0.008), ("choke", 0.034),
            ("floatLevel", 0.005), ("wellDepth", 0.038), ("nozzle", 0.0045), ("mainJet", 0.00135), ("airCorrector", 0.00185),
            ("idleJet", 0.0005), ("idleBleed", 0.0012), ("pumpJet", 0.0004), ("screwTurns", 2.25),
        ];
        var origin = new Origin(OriginKind.Given, "made up for the test");
        var figures = usual.Concat(changes).GroupBy(f => f.Name, StringComparer.Ordinal).Select(f => new Figure(
            new FigureDefinition($"barrel.{f.Key}", f.Key, "", Measure.Length, 0, 1, ""), f.Last().Si, origin, null));
        return new Car
        {
            Name = "Marram Six",
            Document = "{}",
            Layout = "single",
            CylinderCount = 1,
            Banks = [1],
            FiringOrder = [1],
            FiringDegrees = [0],
            Engine = new FigureSet([]),
            Ambient = new FigureSet([]),
            FuelGrade = "E5",
            FuelOrigin = origin,
            SharedManifold = false,
            Barrels =
            [
                new CarBarrel
                {
                    Number = 1,
                    Carburettor = 1,
                    Path = "carburettors[0].barrels[0]",
                    Cylinders = [1],
                    Figures = new FigureSet(figures),
                    EmulsionHoles = [new(-0.004, 2, 0.001), new(0.003, 4, 0.001), new(0.018, 2, 0.0012)],
                    EmulsionHolesOrigin = origin,
                    ProgressionHoles = [new(0.0008, 0.0009), new(0.0022, 0.001), new(0.0038, 0.0011)],
                    ProgressionHolesOrigin = origin,
                },
            ],
        };
    }
}
