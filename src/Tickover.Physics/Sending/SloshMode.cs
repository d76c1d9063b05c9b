namespace Tickover.Physics.Sending;

/// <summary>The first slosh of a tank one way: a surface that swings about where it would settle.</summary>
public static class SloshMode
{
    /// <summary>Circular frequency of the first slosh of a rectangular tank, rad/s.</summary>
    /// <param name="length">Length of the tank the way it sloshes, m.</param>
    /// <param name="depth">Depth of the fuel, m.</param>
    /// <param name="gravity">m/s².</param>
    /// <returns>rad/s.</returns>
    public static double Frequency(double length, double depth, double gravity)
    {
        var k = Math.PI / Precondition.Positive(length);
        return Math.Sqrt(gravity * k * Math.Tanh(k * Precondition.NotNegative(depth))); // sending (10)
    }

    /// <summary>Period of the first slosh, s.</summary>
    /// <param name="length">Length of the tank the way it sloshes, m.</param>
    /// <param name="depth">Depth of the fuel, m.</param>
    /// <param name="gravity">m/s².</param>
    /// <returns>s.</returns>
    public static double Period(double length, double depth, double gravity) => 2 * Math.PI / Frequency(length, depth, gravity);

    /// <summary>Rise at a place for a slope of one of the first mode, m: the first sine of a straight slope, in full.</summary>
    /// <param name="offset">Place from the middle, m.</param>
    /// <param name="length">Length of the tank that way, m.</param>
    /// <returns>m.</returns>
    public static double Shape(double offset, double length) =>
        4 * length / (Math.PI * Math.PI) * Math.Sin(Math.PI * Math.Clamp(offset / length, -0.5, 0.5)); // sending (12)
}
