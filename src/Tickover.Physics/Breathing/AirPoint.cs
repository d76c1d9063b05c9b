namespace Tickover.Physics.Breathing;

/// <summary>Gas exchange of one group at one operating point, as totals of a cycle.</summary>
public sealed record AirPoint
{
    /// <summary>Net air through each barrel of the group, kg a cycle.</summary>
    public required IReadOnlyList<double> AirKilogramsPerCycle { get; init; }

    /// <summary>Air that runs back out of each barrel, kg a cycle.</summary>
    public required IReadOnlyList<double> BackflowKilogramsPerCycle { get; init; }

    /// <summary>Indicated work of a cylinder over the whole cycle, gas exchange included, J.</summary>
    public required double WorkJoulesPerCycle { get; init; }

    /// <summary>Largest relative change of the state over the last cycle, or of air in against gas out (a fifth of it), 1.</summary>
    public required double Residual { get; init; }

    /// <summary>Air in less gas out less what the volumes gained over the cycle, relative to a cylinder full, 1.</summary>
    public required double MassImbalance { get; init; }

    /// <summary>Enthalpy in plus heat less enthalpy out, work and what the volumes gained, relative to the heat, 1.</summary>
    public required double EnergyImbalance { get; init; }

    /// <summary>Cycles integrated.</summary>
    public required int Cycles { get; init; }

    /// <summary>Whether the residual fell below the tolerance.</summary>
    public required bool Settled { get; init; }
}
