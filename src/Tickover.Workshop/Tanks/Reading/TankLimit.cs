using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Tanks.Reading;

/// <summary>What numbers of a tank document may be.</summary>
internal static class TankLimit
{
    public static NumberLimit Size { get; } = new(10, 3000, "mm", "The size");

    public static NumberLimit Place { get; } = new(-5000, 5000, "mm", "The place");

    public static NumberLimit Corner { get; } = new(-3000, 3000, "mm", "The corner");

    public static NumberLimit Radius { get; } = new(0, 500, "mm", "The corner's radius");

    public static NumberLimit Straight { get; } = new(0, 3000, "mm", "The straight length");

    public static NumberLimit Ends { get; } = new(0, 1500, "mm", "How far an end bulges");

    public static NumberLimit Wall { get; } = new(0, 10, "mm", "The wall's thickness");

    public static NumberLimit DrawsAir { get; } = new(0, 50, "mm", "The height at which it draws air");

    public static NumberLimit Slope { get; } = new(-60, 60, "per cent", "The slope");

    public static NumberLimit Push { get; } = new(-1.5, 1.5, "g", "The push");

    public static NumberLimit Litres { get; } = new(0, 500, "litres", "The fuel");

    public static NumberLimit Capacity { get; } = new(1, 500, "litres", "What the tank holds");

    public static NumberLimit Dip { get; } = new(0, 2000, "mm", "The dip");

    public static NumberLimit Ohms { get; } = new(0, 100_000, "ohms", "The resistance");

    public static NumberLimit Needle { get; } = new(-0.2, 1.3, "of the scale", "The needle");

    public static NumberLimit Arm { get; } = new(20, 1000, "mm", "The arm");

    public static NumberLimit Height { get; } = new(-500, 2000, "mm", "The height");
}
