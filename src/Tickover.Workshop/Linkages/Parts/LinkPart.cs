namespace Tickover.Workshop.Linkages.Parts;

/// <summary>What makes one shaft turn another: a <see cref="RodPart"/> or a <see cref="CouplingPart"/>.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="From">Number of the driving shaft in the linkage's list, from 0.</param>
/// <param name="To">Number of the driven shaft.</param>
public abstract record LinkPart(string Name, int From, int To);
