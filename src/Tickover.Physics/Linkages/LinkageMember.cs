namespace Tickover.Physics.Linkages;

/// <summary>What makes one shaft turn another: a <see cref="RodMember"/> or a <see cref="CouplingMember"/>.</summary>
/// <param name="From">Number of the driving shaft, from 0.</param>
/// <param name="To">Number of the driven shaft.</param>
public abstract record LinkageMember(int From, int To)
{
    /// <summary>Where along the driving shaft it takes hold, m.</summary>
    public abstract double FromAlongMetres { get; }

    /// <summary>Where along the driven shaft it takes hold, m.</summary>
    public abstract double ToAlongMetres { get; }
}
