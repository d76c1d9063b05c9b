using Tickover.Physics.Breathing;
using Tickover.Physics.Metering;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>The shapes of the mixture that must appear, on the straight six of the samples.</summary>
public static class ShapeChecks
{
    private const int Slow = 0, Fast = 1;             // places in the grid of wide-open speeds
    private const string WideOpenSpeeds = "air to main fuel wide open, 5500 over 2000 rpm";

    private static readonly Car Tern = CarDocument.Read(
        File.ReadAllText(Path.Combine(Repository.Root, "samples", "tern-2800.car.json"))).Car!;

    private static readonly Lazy<AirSide> WideOpen = new(() => AirSideSolver.Solve(
        Tern.ToEngineSpec(), Tern.ToEngineSpec().Groups[0], Tern.ToAmbientAir(), new OperatingGrid([2000, 5500], [82.0])));

    private static readonly Lazy<MixtureSurvey> Fitted = new(() => MixtureSurvey.Run(Tern, Grid));

    private static readonly SurveyGrid Grid = new() { SpeedsRpm = [1000, 3000], ThrottleDegrees = [3, 12, 16, 82] };

    public static IReadOnlyList<ShapeCheck> All { get; } =
    [
        new()
        {
            Statement = "A plain jet without air richens as more air flows",
            Figure = WideOpenSpeeds,
            Source = Sources.Heywood("section 7.3, faults of the elementary carburettor (from memory)"),
            Kind = SourceKind.FromMemory,
            AtLeast = 0.5,
            AtMost = 0.8,
            Ours = () => Trend(main => main with { AirCorrectorDiameterMetres = 0, HoleRows = [] }),
        },
        new()
        {
            Statement = "A single open bleed hardly mends that",
            Figure = WideOpenSpeeds,
            Source = "Network of orifices, evaluated independently",
            Kind = SourceKind.Derived,
            AtLeast = 0.7,
            AtMost = 0.82,
            Ours = () => Trend(main => main with { HoleRows = [] }),
        },
        new()
        {
            Statement = "Staged holes flatten it",
            Figure = WideOpenSpeeds,
            Source = "Arias and Shedd, J. Fluids Eng. 127 (2005) 778: the level in the well governs the bleed",
            Kind = SourceKind.Published,
            AtLeast = 0.82,
            AtMost = 1.05,
            Ours = () => Trend(main => main),
        },
        new()
        {
            Statement = "A lower float leans the start of the main circuit far more than full load",
            Figure = "main fuel lost by 3 mm at 16 degrees over that wide open, 3000 rpm",
            Source = "Float levels, trade",
            Kind = SourceKind.CommonPractice,
            AtLeast = 5,
            AtMost = 1000,
            Ours = FloatLevel,
        },
        new()
        {
            Statement = "The main circuit does not feed before the progression holes are passed",
            Figure = "main circuit's part of the fuel at 12 degrees, where the plate's edge is at the last hole, 3000 rpm",
            Source = "Idle and progression circuits, training texts of the trade",
            Kind = SourceKind.CommonPractice,
            AtLeast = 0,
            AtMost = 0.05,
            Ours = () => MainPart(1),
        },
        new()
        {
            Statement = "Past them the main circuit takes over",
            Figure = "main circuit's part of the fuel wide open, 3000 rpm",
            Source = "Idle and progression circuits, training texts of the trade",
            Kind = SourceKind.CommonPractice,
            AtLeast = 0.8,
            AtMost = 1,
            Ours = () => MainPart(3),
        },
        new()
        {
            Statement = "Altitude richens by the root of density",
            Figure = "air to fuel at 0 m over that at 2000 m, over the root of the densities, wide open at 3000 rpm",
            Source = Sources.Heywood("section 7.3 (from memory)"),
            Kind = SourceKind.FromMemory,
            AtLeast = 0.95,
            AtMost = 1.05,
            Ours = Altitude,
        },
        new()
        {
            Statement = "The mixture screw matters at idle and fades through progression",
            Figure = "change of λ by half a turn at 12 degrees over that at 3 degrees, 1000 rpm",
            Source = "Idle adjustment, trade",
            Kind = SourceKind.CommonPractice,
            AtLeast = 0,
            AtMost = 0.5,
            Ours = Screw,
        },
    ];

    private static double Trend(Func<MainCircuit, MainCircuit> change)
    {
        var air = WideOpen.Value;
        var barrel = air.Engine.Barrels[air.Group.Barrels[0]];
        var fuel = FuelSideSolver.Solve(air, 0, barrel with { Main = change(barrel.Main) }, Tern.ToFuelProperties());
        double Ratio(int speed) => air.At(speed, 0).AirKilogramsPerCycle[0] * air.Grid.SpeedsRpm[speed] / fuel[speed, 0].MainKilogramsPerSecond;
        return Ratio(Fast) / Ratio(Slow);
    }

    private static double FloatLevel()
    {
        var lowered = Fitted.Value.Trial(Change("barrel.floatLevel", "8 mm"));
        double Lost(int throttle) => 1 - Point(lowered, 1, throttle).MainFuelKilogramsPerSecond / Point(Fitted.Value, 1, throttle).MainFuelKilogramsPerSecond;
        return Lost(2) / Lost(3);
    }

    private static double MainPart(int throttle)
    {
        var point = Point(Fitted.Value, 1, throttle);
        return point.MainFuelKilogramsPerSecond / point.FuelKilogramsPerSecond;
    }

    private static double Altitude()
    {
        var low = Change("ambient.altitude", "0 m");
        var high = Change("ambient.altitude", "2000 m");
        double Ratio(Car car) => Point(MixtureSurvey.Run(car, Grid), 1, 3).AirFuelRatio;
        var root = Math.Sqrt(low.ToAmbientAir().DensityKilogramsPerCubicMetre / high.ToAmbientAir().DensityKilogramsPerCubicMetre);
        return Ratio(low) / Ratio(high) / root;
    }

    private static double Screw()
    {
        var opened = Fitted.Value.Trial(Change("barrel.screwTurns", "2.75"));
        double Effect(int throttle) => Math.Abs(Point(opened, 0, throttle).Lambda / Point(Fitted.Value, 0, throttle).Lambda - 1);
        return Effect(1) / Effect(0);
    }

    private static Car Change(string path, string text) => CarDocument.Change(Tern, path, text).Car!;

    private static BarrelPoint Point(MixtureSurvey survey, int speed, int throttle) => survey.Map.ForBarrel(1).Points[speed, throttle];
}
