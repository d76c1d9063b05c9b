namespace Tickover.Workshop.JetChoice;

/// <summary>What a choice of jets is made from.</summary>
public sealed record JetChoiceSettings
{
    /// <summary>Jets in stock; null to choose from the sizes sold only.</summary>
    public JetShelf? Shelf { get; init; }

    /// <summary>Targets of λ.</summary>
    public JetTargets Targets { get; init; } = JetTargets.Usual;
}
