namespace Tickover.Workshop.Supply;

/// <summary>How the car is thrown about, for the fuel in the float chambers.</summary>
/// <param name="BendG">Sideways acceleration in a bend over gravity, 1.</param>
/// <param name="BrakingG">Braking over gravity, 1.</param>
/// <param name="SlopePart">Rise of a hill over its length, 1.</param>
public sealed record SupplyAttitude(double BendG, double BrakingG, double SlopePart)
{
    /// <summary>What an old car on road tyres comes to: common practice.</summary>
    public static SupplyAttitude Usual { get; } = new(0.6, 0.7, 0.2);
}
