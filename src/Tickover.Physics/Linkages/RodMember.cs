namespace Tickover.Physics.Linkages;

/// <summary>A rod with ball ends between levers of two shafts.</summary>
/// <param name="From">Number of the driving shaft, from 0.</param>
/// <param name="To">Number of the driven shaft.</param>
/// <param name="FromLever">Lever on the driving shaft.</param>
/// <param name="ToLever">Lever on the driven shaft.</param>
/// <param name="LengthMetres">Between the balls, m; above zero.</param>
public sealed record RodMember(int From, int To, Lever FromLever, Lever ToLever, double LengthMetres) : LinkageMember(From, To)
{
    /// <inheritdoc/>
    public override double FromAlongMetres => FromLever.AlongMetres;

    /// <inheritdoc/>
    public override double ToAlongMetres => ToLever.AlongMetres;
}
