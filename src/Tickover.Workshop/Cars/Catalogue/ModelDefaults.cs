using Tickover.Physics.Breathing;
using Tickover.Physics.Metering;

namespace Tickover.Workshop.Cars.Catalogue;

/// <summary>The defaults that the physics' own specifications carry, read from them so that each stands in one place.</summary>
/// <remarks>Only members with a default are read from these; the required ones are zero and mean nothing.</remarks>
internal static class ModelDefaults
{
    public static BarrelAirWay AirWay { get; } =
        new() { ThrottleBoreMetres = 0, ClosedAngleRadians = 0, SpindleDiameterMetres = 0, ChokeDiameterMetres = 0 };

    public static MainCircuit Main { get; } = new()
    {
        JetDiameterMetres = 0,
        AirCorrectorDiameterMetres = 0,
        HoleRows = [],
        WellDepthMetres = 0,
        NozzleDiameterMetres = 0,
    };

    public static IdleCircuit Idle { get; } = new()
    {
        JetDiameterMetres = 0,
        BleedDiameterMetres = 0,
        ScrewSeatDiameterMetres = 0,
        ScrewTurns = 0,
        ProgressionHoles = [],
    };

    public static PumpCircuit Pump { get; } = new() { JetDiameterMetres = 0 };

    public static FloatChamber Float { get; } = new() { LipHeightMetres = 0 };

    public static ValveTiming Valve { get; } =
        new() { HeadDiameterMetres = 0, MaximumLiftMetres = 0, OpensDegrees = 0, ClosesDegrees = 0 };

    public static IntakeTract Intake { get; } = new()
    {
        TrumpetLengthMetres = 0,
        BarrelLengthMetres = 0,
        RunnerLengthMetres = 0,
        RunnerDiameterMetres = 0,
        PortVolumeCubicMetres = 0,
    };

    public static ExhaustTract Exhaust { get; } = new() { BackPressureCoefficient = 0 };

    public static Combustion Combustion { get; } = new();
}
