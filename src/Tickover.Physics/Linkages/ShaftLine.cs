namespace Tickover.Physics.Linkages;

/// <summary>Where a shaft or a throttle spindle lies: a point of its centre line and the direction the line runs.</summary>
/// <remarks>
/// Angles about it are counted right-handed: clockwise as seen along the direction. A lever's angle begins straight up, on an upright
/// shaft straight ahead.
/// </remarks>
public sealed record ShaftLine
{
    // Within a tenth of a degree of upright there is no telling which way is up the side of the shaft.
    private const double Upright = 1 - 1.5e-6;

    private readonly SpaceVector _up;
    private readonly SpaceVector _beside;

    /// <summary>Makes the line.</summary>
    /// <param name="origin">A point of it, m; lengths along the shaft are counted from here.</param>
    /// <param name="direction">Which way it runs; any length but none.</param>
    /// <exception cref="ArgumentOutOfRangeException">The direction has no length.</exception>
    public ShaftLine(SpaceVector origin, SpaceVector direction)
    {
        (Origin, Direction) = (origin, direction.ToUnit());
        var up = Math.Abs(Direction.Z) < Upright ? new SpaceVector(0, 0, 1) : new SpaceVector(1, 0, 0);
        _up = (up - up.Dot(Direction) * Direction).ToUnit();
        _beside = Direction.Cross(_up);
    }

    /// <summary>The point lengths along the shaft are counted from, m.</summary>
    public SpaceVector Origin { get; }

    /// <summary>Unit vector along it.</summary>
    public SpaceVector Direction { get; }

    /// <summary>A point of the centre line.</summary>
    /// <param name="alongMetres">How far along, m.</param>
    /// <returns>The point, m.</returns>
    public SpaceVector At(double alongMetres) => Origin + alongMetres * Direction;

    /// <summary>A lever's arm, from the centre line to the ball.</summary>
    /// <param name="lever">The lever.</param>
    /// <param name="turnedRadians">How far the shaft has turned, radians.</param>
    /// <returns>The arm, m, square to the shaft.</returns>
    public SpaceVector Arm(Lever lever, double turnedRadians)
    {
        ArgumentNullException.ThrowIfNull(lever);
        var (sin, cos) = Math.SinCos(lever.ClampRadians + turnedRadians);
        return lever.LengthMetres * (cos * _up + sin * _beside); // linkages (6)
    }

    /// <summary>Where a lever's ball stands.</summary>
    /// <param name="lever">The lever.</param>
    /// <param name="turnedRadians">How far the shaft has turned, radians.</param>
    /// <returns>The ball's centre, m.</returns>
    public SpaceVector Ball(Lever lever, double turnedRadians) => Arm(lever, turnedRadians) + At(lever.AlongMetres);

    /// <summary>The same shaft elsewhere.</summary>
    /// <param name="by">How far it has moved, m.</param>
    /// <returns>The line moved, its direction kept.</returns>
    public ShaftLine Moved(SpaceVector by) => new(Origin + by, Direction);
}
