namespace Tickover.Physics.Linkages;

/// <summary>A place or a direction in space; the unit is the user's, metres for places.</summary>
/// <remarks>Body axes of the car as everywhere here: x forward, y to the left, z up. <c>default</c> is the origin.</remarks>
/// <param name="X">Forward.</param>
/// <param name="Y">To the left.</param>
/// <param name="Z">Up.</param>
public readonly record struct SpaceVector(double X, double Y, double Z)
{
    /// <summary>Its length.</summary>
    public double Length => Math.Sqrt(Dot(this));

    /// <summary>The sum of two.</summary>
    /// <param name="a">One.</param>
    /// <param name="b">The other.</param>
    /// <returns>Their sum.</returns>
    public static SpaceVector operator +(SpaceVector a, SpaceVector b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>The way from one place to another.</summary>
    /// <param name="a">Where it ends.</param>
    /// <param name="b">Where it begins.</param>
    /// <returns>Their difference.</returns>
    public static SpaceVector operator -(SpaceVector a, SpaceVector b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>A vector so many times as long.</summary>
    /// <param name="factor">How many times.</param>
    /// <param name="vector">The vector.</param>
    /// <returns>The longer or shorter vector.</returns>
    public static SpaceVector operator *(double factor, SpaceVector vector) => new(factor * vector.X, factor * vector.Y, factor * vector.Z);

    /// <summary>The scalar product.</summary>
    /// <param name="other">The other vector.</param>
    /// <returns>Product of the lengths and the cosine of the angle between.</returns>
    public double Dot(SpaceVector other) => X * other.X + Y * other.Y + Z * other.Z;

    /// <summary>The vector product, right-handed.</summary>
    /// <param name="other">The second vector.</param>
    /// <returns>A vector square to both.</returns>
    public SpaceVector Cross(SpaceVector other) => new(Y * other.Z - Z * other.Y, Z * other.X - X * other.Z, X * other.Y - Y * other.X);

    /// <summary>The direction of a vector.</summary>
    /// <returns>A vector of length one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It has no length, or is not finite.</exception>
    public SpaceVector ToUnit()
    {
        var length = Precondition.Positive(Length);
        return 1 / length * this;
    }
}
