using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Tests.Cars;

public class CarReadingTests
{
    private const double Tolerance = 1e-9;

    [Fact]
    public void The_least_document_is_a_whole_car()
    {
        var car = CarTexts.Sound(CarTexts.Twin);

        Assert.Equal("Twin", car.Name);
        Assert.Equal("inline twin", car.Layout);
        Assert.Equal([1, 2], car.FiringOrder);
        Assert.Equal([0.0, 360.0], car.FiringDegrees);
        Assert.Equal("E5", car.FuelGrade);
        Assert.Equal(OriginKind.CommonPractice, car.FuelOrigin.Kind);
        Assert.Equal(2, car.Barrels.Count);
        Assert.Equal(FigureCatalogue.Engine.Count, car.Engine.Count);
        Assert.Equal(FigureCatalogue.Ambient.Count, car.Ambient.Count);
        Assert.All(car.Barrels, b => Assert.Equal(FigureCatalogue.Barrel.Count, b.Figures.Count));
        Assert.Equal("carburettors[0].barrels[1]", car.Barrels[1].Path);
    }

    [Fact]
    public void A_given_figure_carries_what_was_typed_and_a_default_its_rule()
    {
        var car = CarTexts.Sound(CarTexts.TwinWith("\"stroke\": \"75 mm\"", "\"stroke\": \"3 in\""));

        Assert.Equal("3 in", car.Engine["engine.stroke"].AsTyped);
        Assert.Equal(OriginKind.Given, car.Engine["engine.stroke"].Origin.Kind);
        Assert.Equal(0.0762, car.Engine.Si("engine.stroke"), Tolerance);

        // 1.8 x 76.2 mm = 137.16 mm
        var rod = car.Engine["engine.rodLength"];
        Assert.Equal(0.13716, rod.Si, Tolerance);
        Assert.Equal(OriginKind.Computed, rod.Origin.Kind);
        Assert.Null(rod.AsTyped);
        Assert.Contains("1.8 × the stroke", rod.Origin.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Defaults_follow_the_rules_of_thumb_by_hand()
    {
        var car = CarTexts.Sound(CarTexts.TwinWith("\"throttleBore\": \"40 mm\", \"choke\": \"32 mm\"", "\"note\": \"nothing known\"").Replace(", \"mainJet\": 130", string.Empty, StringComparison.Ordinal));
        var barrel = car.Barrels[0].Figures;

        // 80 mm x 75 mm: 0.37699 l; 20 x sqrt(0.37699 x 5.5) = 28.80 -> 29 mm; 29 / 0.8 = 36.25 -> 36 mm
        Assert.Equal(0.029, barrel.Si("barrel.choke"), Tolerance);
        Assert.Equal(0.036, barrel.Si("barrel.throttleBore"), Tolerance);

        // 4 x 29 = 116 -> 115; 115 + 55 = 170; 50 x (376.99/400)^(1/3) = 49.0 -> 50
        Assert.Equal(1.15e-3, barrel.Si("barrel.mainJet"), Tolerance);
        Assert.Equal(1.70e-3, barrel.Si("barrel.airCorrector"), Tolerance);
        Assert.Equal(0.50e-3, barrel.Si("barrel.idleJet"), Tolerance);

        // 6 x 5.5 - 8 = 25 degrees; 0.46 x 80 = 36.8 mm
        Assert.Equal(25 * Math.PI / 180, car.Engine.Si("engine.inletOpensBefore"), Tolerance);
        Assert.Equal(65 * Math.PI / 180, car.Engine.Si("engine.exhaustOpensBefore"), Tolerance);
        Assert.Equal(0.0368, car.Engine.Si("engine.inletValveDiameter"), Tolerance);
    }

    [Fact]
    public void The_narrowest_setting_holds()
    {
        const string Settings = """
            "barrels": { "throttleBore": "40 mm", "choke": "32 mm", "mainJet": 120 },
            """;
        var json = CarTexts.TwinWith("\"barrels\": { \"throttleBore\": \"40 mm\", \"choke\": \"32 mm\" },", Settings)
            .Replace("{ \"barrels\": [{", "{ \"choke\": \"30 mm\", \"barrels\": [{", StringComparison.Ordinal);

        var car = CarTexts.Sound(json);

        Assert.All(car.Barrels, b => Assert.Equal(0.030, b.Figures.Si("barrel.choke"), Tolerance));
        Assert.Equal(1.20e-3, car.Barrels[0].Figures.Si("barrel.mainJet"), Tolerance);
        Assert.Equal(1.30e-3, car.Barrels[1].Figures.Si("barrel.mainJet"), Tolerance);

        // A default that rests on an overridden figure follows it in that barrel only.
        Assert.Equal(1.75e-3, car.Barrels[0].Figures.Si("barrel.airCorrector"), Tolerance);
        Assert.Equal(1.85e-3, car.Barrels[1].Figures.Si("barrel.airCorrector"), Tolerance);
    }

    [Fact]
    public void A_computed_choke_stays_inside_a_throttle_bore_that_is_given()
    {
        var car = CarTexts.Sound(CarTexts.TwinWith("\"throttleBore\": \"40 mm\", \"choke\": \"32 mm\"", "\"throttleBore\": \"28 mm\", \"mainJet\": 100"));

        Assert.Equal(0.025, car.Barrels[0].Figures.Si("barrel.choke"), Tolerance);
    }

    [Fact]
    public void Holes_are_read_in_order_from_wherever_they_stand()
    {
        const string Holes = """
            "emulsionTube": "E4", "emulsionHoles": ["4 x 0,8 mm at 20 mm", "2 × 1 mm at -3 mm"], "progressionHoles": ["1 mm at 2.5 mm", "1.2 mm at 0.8 mm"], "choke": "32 mm" }
            """;
        var car = CarTexts.Sound(CarTexts.TwinWith("\"choke\": \"32 mm\" }", Holes.Trim()));
        var barrel = car.Barrels[0];

        Assert.Equal("E4", barrel.EmulsionTube);
        Assert.Equal([new CarHoleRow(-0.003, 2, 0.001), new CarHoleRow(0.020, 4, 0.0008)], barrel.EmulsionHoles);
        Assert.Equal([new CarProgressionHole(0.0008, 0.0012), new CarProgressionHole(0.0025, 0.001)], barrel.ProgressionHoles);
        Assert.Equal(OriginKind.Given, barrel.EmulsionHolesOrigin.Kind);
        Assert.Equal(OriginKind.Given, barrel.ProgressionHolesOrigin.Kind);
    }

    [Fact]
    public void Feeds_that_nobody_gives_go_in_order()
    {
        var car = CarTexts.Sound(CarTexts.TwinWith("{ \"feeds\": [1] }, { \"feeds\": [2], \"mainJet\": 130 }", "{}, {}"));

        Assert.Equal([1], car.Barrels[0].Cylinders);
        Assert.Equal([2], car.Barrels[1].Cylinders);
    }

    [Fact]
    public void A_V8_fires_by_its_order_and_stands_in_two_banks()
    {
        var car = CarTexts.Sound(Repository.Sample("osprey-v8"));

        Assert.Equal([1, 1, 1, 1, 2, 2, 2, 2], car.Banks);

        // Order 1 5 4 8 6 3 7 2, 90 degrees apart.
        Assert.Equal([0.0, 630.0, 450.0, 180.0, 90.0, 360.0, 540.0, 270.0], car.FiringDegrees);
    }

    [Fact]
    public void Uneven_firing_is_taken_from_the_document()
    {
        var car = CarTexts.Sound(CarTexts.TwinWith("\"cylinders\": 2,", "\"cylinders\": 2, \"firingOrder\": [2, 1], \"firingAngles\": [\"0°\", \"270°\"],"));

        // Cylinder 1 fires 270 degrees after 2, so that 2 comes 450 degrees after 1.
        Assert.Equal([0.0, 450.0], car.FiringDegrees.Select(d => Math.Round(d, 9)));
    }

    [Fact]
    public void A_layout_with_two_banks_has_two_halves_by_default()
    {
        var car = CarTexts.Sound(CarTexts.TwinWith("\"cylinders\": 2,", "\"layout\": \"flat twin\", \"cylinders\": 2,"));

        Assert.Equal([1, 2], car.Banks);
    }

    [Fact]
    public void An_unusual_jet_draws_a_warning_and_is_used()
    {
        var reading = CarDocument.Read(CarTexts.TwinWith("\"mainJet\": 130", "\"mainJet\": 250"));

        var warning = Assert.Single(reading.Warnings, w => w.Path is "carburettors[0].barrels[1].mainJet");
        Assert.Contains("250 is unusual", warning.Problem, StringComparison.Ordinal);
        Assert.Equal(2.5e-3, reading.Car!.Barrels[1].Figures.Si("barrel.mainJet"), Tolerance);
    }
}
