namespace Tickover.Workshop.Linkages.Parts;

/// <summary>A lever on a shaft.</summary>
/// <param name="Name">What it is called on its shaft.</param>
/// <param name="LengthMillimetres">Centre of the shaft to centre of the ball, mm.</param>
/// <param name="AngleDegrees">Where it points with the plates on their stops and the pedal up: degrees clockwise from straight up, on an upright shaft from straight ahead.</param>
/// <param name="AlongMillimetres">How far along the shaft from its measured point, mm.</param>
/// <param name="IsClamped">Whether it is held by a clamp and can be turned on its shaft.</param>
public sealed record LeverPart(string Name, double LengthMillimetres, double AngleDegrees, double AlongMillimetres, bool IsClamped);
