namespace Tickover.Physics.Linkages;

/// <summary>A lever clamped on a shaft, with a ball at its end.</summary>
/// <param name="LengthMetres">From the shaft's centre line to the ball's centre, m; above zero.</param>
/// <param name="ClampRadians">Where it is clamped with the shaft at rest, radians; see <see cref="ShaftLine"/>.</param>
/// <param name="AlongMetres">How far along the shaft the ball stands, m.</param>
public sealed record Lever(double LengthMetres, double ClampRadians, double AlongMetres);
