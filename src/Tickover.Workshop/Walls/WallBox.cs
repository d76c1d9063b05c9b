namespace Tickover.Workshop.Walls;

/// <summary>An upright rectangle on a wall, mm to the right and up.</summary>
/// <param name="Left">Left edge.</param>
/// <param name="Bottom">Lower edge.</param>
/// <param name="Right">Right edge.</param>
/// <param name="Top">Upper edge.</param>
public readonly record struct WallBox(double Left, double Bottom, double Right, double Top)
{
    /// <summary>Area, mm².</summary>
    public double Area => (Right - Left) * (Top - Bottom);

    /// <summary>Its middle.</summary>
    public WallPoint Middle => new((Left + Right) / 2, (Bottom + Top) / 2);

    /// <summary>Whether a point lies in it or on its edge.</summary>
    /// <param name="point">The point.</param>
    /// <returns>Whether it does.</returns>
    public bool Holds(WallPoint point) => point.Right >= Left && point.Right <= Right && point.Up >= Bottom && point.Up <= Top;
}
