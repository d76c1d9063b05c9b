using Tickover.Physics.Linkages;

namespace Tickover.Physics.Tanks;

/// <summary>How a tank stands, or which way its fuel is pushed: the two are the same to the fuel. docs/physics/tanks.md (1), (2).</summary>
/// <remarks><c>default</c> is level and at rest. Body axes: x forward, y to the left, z up.</remarks>
/// <param name="Ahead">How much the nose is up, as the tangent; the forward acceleration over gravity.</param>
/// <param name="Left">How much the left side is up, as the tangent; the acceleration to the left over gravity.</param>
public readonly record struct Tilt(double Ahead, double Left)
{
    /// <summary>Steepest slope either way, tangent: some 80°; beyond it "up" has little to do with the tank's own.</summary>
    public const double Steepest = 5.7;

    /// <summary>Level and at rest.</summary>
    public static Tilt Level => default;

    /// <summary>The direction that is up to the fuel, of length one, in the tank's axes.</summary>
    public SpaceVector Up => new SpaceVector(Ahead, Left, 1).ToUnit(); // tanks (1)

    /// <summary>A tank that stands tilted and still.</summary>
    /// <param name="noseUpRadians">How far the nose is up, radians.</param>
    /// <param name="leftUpRadians">How far the left side is up, radians, as seen along the car.</param>
    /// <returns>The tilt.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Steeper than <see cref="Steepest"/>.</exception>
    public static Tilt Standing(double noseUpRadians, double leftUpRadians) => Of(Math.Tan(noseUpRadians), Math.Tan(leftUpRadians));

    /// <summary>A level tank that is pushed.</summary>
    /// <param name="forward">Acceleration forward, m/s²; braking is below zero.</param>
    /// <param name="left">Acceleration to the left, m/s²: a left-hand bend.</param>
    /// <param name="gravity">m/s²; above zero.</param>
    /// <returns>The tilt.</returns>
    public static Tilt Pushed(double forward, double left, double gravity = 9.80665)
    {
        Precondition.Positive(gravity);
        return Of(forward / gravity, left / gravity); // tanks (2)
    }

    /// <summary>Height of a place above the tank's origin as the fuel sees it, m.</summary>
    /// <param name="place">The place, m.</param>
    /// <returns>m.</returns>
    public double HeightOf(SpaceVector place) => Up.Dot(place);

    /// <summary>How far the surface stands above a place, along the tank's own upright, as a dip stick there is wetted, m.</summary>
    /// <param name="level">Level of the surface, m.</param>
    /// <param name="place">Foot of the stick, m.</param>
    /// <returns>m; below zero where the place is dry.</returns>
    public double DepthOver(double level, SpaceVector place)
    {
        var up = Up;
        return (level - up.Dot(place)) / up.Z; // tanks (3)
    }

    /// <summary>The level that wets a stick so far: the way back from <see cref="DepthOver"/>.</summary>
    /// <param name="depth">How far the stick is wetted, m.</param>
    /// <param name="place">Its foot, m.</param>
    /// <returns>Level, m.</returns>
    public double LevelAt(double depth, SpaceVector place)
    {
        var up = Up;
        return up.Dot(place) + depth * up.Z;
    }

    private static Tilt Of(double ahead, double left) =>
        new(Precondition.Within(ahead, -Steepest, Steepest), Precondition.Within(left, -Steepest, Steepest));
}
