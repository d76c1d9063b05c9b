namespace Tickover.Workshop.Linkages.Reading;

/// <summary>What a number of the document may be.</summary>
/// <param name="Least">Smallest.</param>
/// <param name="Most">Largest.</param>
/// <param name="Unit">Its unit, such as mm.</param>
/// <param name="What">What it is, as at the beginning of a sentence.</param>
internal sealed record NumberLimit(double Least, double Most, string Unit, string What)
{
    /// <summary>What to do about a number outside.</summary>
    public string WhatToDo { get; init; } = "Measure it again; lengths are in mm, angles in degrees.";

    public static NumberLimit Length { get; } = new(5, 2000, "mm", "The length");

    public static NumberLimit LeverLength { get; } = new(5, 300, "mm", "The lever's length, shaft to ball");

    public static NumberLimit Angle { get; } = new(-360, 360, "degrees", "The angle");

    public static NumberLimit Along { get; } = new(-2000, 2000, "mm", "The distance along the shaft");

    public static NumberLimit Coordinate { get; } = new(-5000, 5000, "mm", "The place");

    public static NumberLimit Direction { get; } = new(-5000, 5000, "", "The direction");

    public static NumberLimit Diameter { get; } = new(3, 40, "mm", "The shaft's diameter");

    public static NumberLimit Travel { get; } = new(2, 120, "degrees", "The pedal shaft's travel");

    public static NumberLimit Bore { get; } = new(15, 80, "mm", "The bore at the plates");

    public static NumberLimit Seated { get; } = new(0, 25, "degrees", "The angle of the shut plate");

    public static NumberLimit Plate { get; } = new(0, 95, "degrees", "The angle of the plate");

    public static NumberLimit Torque { get; } = new(0, 20, "N m", "The spring's torque");

    public static NumberLimit Rate { get; } = new(0, 1, "N m per degree", "The spring's rate");

    public static NumberLimit Pitch { get; } = new(0.2, 3, "mm", "The thread's pitch");

    public static NumberLimit Step { get; } = new(0.01, 1, "turns", "The smallest step");

    public static NumberLimit Play { get; } = new(0, 3, "mm", "The play of a ball end");

    public static NumberLimit Ahead { get; } = new(-45, 45, "degrees", "How far it stands ahead");

    public static NumberLimit Arm { get; } = new(3, 60, "mm", "The arm of the screw");

    public static NumberLimit Rise { get; } = new(-100, 200, "K", "The rise of temperature");
}
