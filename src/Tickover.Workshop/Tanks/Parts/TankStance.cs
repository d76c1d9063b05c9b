using Tickover.Physics.Tanks;

namespace Tickover.Workshop.Tanks.Parts;

/// <summary>A way the car stands or is pushed, for which the tanks are looked at.</summary>
/// <param name="Name">In words, such as "nose down 10 %".</param>
/// <param name="Tilt">What the fuel feels.</param>
/// <param name="IsPassing">Whether it passes before fuel has crossed from tank to tank: a bend, braking; each tank keeps its fuel then.</param>
public sealed record TankStance(string Name, Tilt Tilt, bool IsPassing)
{
    /// <summary>Those looked at where the document names none.</summary>
    public static IReadOnlyList<TankStance> Usual { get; } =
    [
        new("uphill 15 %", new Tilt(0.15, 0), false),
        new("downhill 15 %", new Tilt(-0.15, 0), false),
        new("parked, left side 10 % up", new Tilt(0, 0.1), false),
        new("parked, right side 10 % up", new Tilt(0, -0.1), false),
        new("left-hand bend 0.3 g", new Tilt(0, 0.3), true),
        new("right-hand bend 0.3 g", new Tilt(0, -0.3), true),
        new("braking 0.5 g", new Tilt(-0.5, 0), true),
    ];
}
