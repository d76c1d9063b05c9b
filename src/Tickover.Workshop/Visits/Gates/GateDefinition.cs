namespace Tickover.Workshop.Visits.Gates;

/// <summary>A gate with its checks.</summary>
/// <param name="Gate">Which.</param>
/// <param name="Name">As it stands at the tap, such as "engine may run".</param>
/// <param name="Before">What it stands before, such as "the engine runs".</param>
/// <param name="Checks">Its checks in the order of doing.</param>
public sealed record GateDefinition(Gate Gate, string Name, string Before, IReadOnlyList<GateCheck> Checks)
{
    /// <summary>All that undoes any of its checks; an override of the gate is undone by the same.</summary>
    public Disturbance StaleAfter => Checks.Aggregate(Disturbance.None, (all, check) => all | check.StaleAfter);
}
