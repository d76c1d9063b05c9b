using Tickover.Physics.Air;
using Tickover.Physics.Breathing;
using Tickover.Physics.Fuels;

namespace Tickover.Workshop.Cars;

/// <summary>The border between a car's figures and the physics' SI specifications of engine, air and fuel.</summary>
public static class EnginePhysics
{
    private const double DegreesPerRadian = 180 / Math.PI;
    private const double TopDeadCentreOfOverlap = 360;
    private const double BottomDeadCentreAfterFiring = 180;
    private const double BottomDeadCentreAfterInlet = 540;

    // The back-pressure is stated at peak power with full throttle; the flow there by a common volumetric efficiency
    // (Saha's lecture examples and common practice: 0.8 to 0.9) and the air of the standard day.
    private const double VolumetricEfficiencyAtPeakPower = 0.85;
    private const double StandardAirDensity = 1.225;
    private const double CyclesPerRadian = 1 / (4 * Math.PI);

    /// <summary>The engine with its barrels.</summary>
    /// <param name="car">The car.</param>
    /// <returns>The specification in SI.</returns>
    public static EngineSpec ToEngineSpec(this Car car)
    {
        ArgumentNullException.ThrowIfNull(car);
        var cylinder = ToCylinderGeometry(car.Engine);
        return new EngineSpec
        {
            Cylinder = cylinder,
            CylinderCount = car.CylinderCount,
            FiringDegrees = car.FiringDegrees,
            IntakeValve = ToValveTiming(car.Engine, "inlet", TopDeadCentreOfOverlap, BottomDeadCentreAfterInlet),
            ExhaustValve = ToValveTiming(car.Engine, "exhaust", BottomDeadCentreAfterFiring, TopDeadCentreOfOverlap),
            Intake = ToIntakeTract(car.Engine),
            Exhaust = ToExhaustTract(car.Engine, cylinder),
            Combustion = ToCombustion(car.Engine),
            Barrels = [.. car.Barrels.Select(BarrelPhysics.ToBarrelSpec)],
            Groups = ToIntakeGroups(car),
        };
    }

    /// <summary>The air of the day.</summary>
    /// <param name="car">The car.</param>
    /// <returns>The moist air.</returns>
    public static AmbientAir ToAmbientAir(this Car car)
    {
        ArgumentNullException.ThrowIfNull(car);
        return MoistAir.At(car.Ambient.Si("ambient.pressure"), car.Ambient.Si("ambient.temperature"), car.Ambient.Si("ambient.humidity"));
    }

    /// <summary>The fuel at the temperature of the float chamber.</summary>
    /// <param name="car">The car.</param>
    /// <returns>The fuel's properties.</returns>
    public static FuelProperties ToFuelProperties(this Car car)
    {
        ArgumentNullException.ThrowIfNull(car);
        return FuelGrade.TryParse(car.FuelGrade, out var grade)
            ? grade.At(car.Ambient.Si("ambient.fuelTemperature"))
            : throw new ArgumentException($"'{car.FuelGrade}' is no fuel; allowed: {FuelGrade.Allowed}.", nameof(car));
    }

    private static CylinderGeometry ToCylinderGeometry(FigureSet engine) => new()
    {
        BoreMetres = engine.Si("engine.bore"),
        StrokeMetres = engine.Si("engine.stroke"),
        RodLengthMetres = engine.Si("engine.rodLength"),
        CompressionRatio = engine.Si("engine.compressionRatio"),
    };

    /// <summary>One kind of valve; the trade counts opening before one dead centre and closing after another.</summary>
    private static ValveTiming ToValveTiming(FigureSet engine, string side, double opensBefore, double closesAfter) => new()
    {
        Count = (int)engine.Si($"engine.{side}Valves"),
        HeadDiameterMetres = engine.Si($"engine.{side}ValveDiameter"),
        MaximumLiftMetres = engine.Si($"engine.{side}ValveLift"),
        OpensDegrees = opensBefore - Degrees(engine, $"engine.{side}OpensBefore"),
        ClosesDegrees = closesAfter + Degrees(engine, $"engine.{side}ClosesAfter"),
        DischargeCoefficient = engine.Si($"engine.{side}Discharge"),
        ThroatToHeadRatio = engine.Si($"engine.{side}ThroatRatio"),
    };

    private static IntakeTract ToIntakeTract(FigureSet engine) => new()
    {
        TrumpetLengthMetres = engine.Si("engine.trumpetLength"),
        BarrelLengthMetres = engine.Si("engine.barrelLength"),
        RunnerLengthMetres = engine.Si("engine.runnerLength"),
        RunnerDiameterMetres = engine.Si("engine.runnerBore"),
        PortVolumeCubicMetres = engine.Si("engine.portVolume"),
        RunnerLossCoefficient = engine.Si("engine.runnerLoss"),
        WallTemperatureKelvin = engine.Si("engine.portWallTemperature"),
        HeatingEffectiveness = engine.Si("engine.inletHeating"),
        EvaporationCoolingKelvin = engine.Si("engine.evaporationCooling"),
    };

    private static ExhaustTract ToExhaustTract(FigureSet engine, CylinderGeometry cylinder)
    {
        var cyclesPerSecond = engine.Si("engine.peakPowerSpeed") * CyclesPerRadian;
        var massFlow = StandardAirDensity * cylinder.SweptVolumeCubicMetres * cyclesPerSecond * VolumetricEfficiencyAtPeakPower;
        return new ExhaustTract
        {
            BackPressureCoefficient = engine.Si("engine.exhaustBackPressure") / (massFlow * massFlow),
            GasTemperatureKelvin = engine.Si("engine.exhaustGasTemperature"),
        };
    }

    private static Combustion ToCombustion(FigureSet engine) => new()
    {
        StartDegrees = -Degrees(engine, "engine.burnStartsBefore"),
        DurationDegrees = Degrees(engine, "engine.burnDuration"),
        HeatPerAirJoulesPerKilogram = engine.Si("engine.heatPerAir"),
        WallTemperatureKelvin = engine.Si("engine.chamberWallTemperature"),
    };

    private static IReadOnlyList<IntakeGroup> ToIntakeGroups(Car car) =>
    [
        .. car.Barrels
            .GroupBy(b => b.Cylinders.Min())
            .Select(group => new IntakeGroup
            {
                Barrels = [.. group.Select(b => b.Number - 1)],
                Cylinders = [.. group.First().Cylinders.Order().Select(c => c - 1)],
                SharedVolumeCubicMetres = car.SharedManifold ? car.Engine.Si("engine.sharedVolume") : 0,
            }),
    ];

    private static double Degrees(FigureSet figures, string key) => figures.Si(key) * DegreesPerRadian;
}
