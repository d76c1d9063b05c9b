namespace Tickover.Physics.Linkages;

/// <summary>A coupling with a screw between spindles in one line, so that one turns the other degree for degree.</summary>
/// <param name="From">Number of the driving shaft, from 0.</param>
/// <param name="To">Number of the driven shaft.</param>
/// <param name="OffsetRadians">How far the driven spindle stands ahead, right-handed about its own direction, radians.</param>
/// <param name="FromAlong">Where it takes hold on the driving spindle, m along.</param>
/// <param name="ToAlong">Where on the driven spindle, m along.</param>
public sealed record CouplingMember(int From, int To, double OffsetRadians, double FromAlong, double ToAlong) : LinkageMember(From, To)
{
    /// <inheritdoc/>
    public override double FromAlongMetres => FromAlong;

    /// <inheritdoc/>
    public override double ToAlongMetres => ToAlong;
}
