namespace Tickover.Physics.Inference;

/// <summary>How probable each outcome of an observation is, given the causes that are at work. docs/physics/inference.md.</summary>
public abstract class OutcomeModel
{
    private protected OutcomeModel(int outcomes) => Outcomes = outcomes;

    /// <summary>How many outcomes there are, at least two.</summary>
    public int Outcomes { get; }

    /// <summary>Probability of an outcome, if it is told without error.</summary>
    /// <param name="outcome">Number of the outcome.</param>
    /// <param name="active">Numbers of the causes at work; may be empty.</param>
    /// <returns>0 to 1; the outcomes add up to one.</returns>
    public abstract double Probability(int outcome, ReadOnlySpan<int> active);

    private protected static double Chance(double value, string name) => Precondition.Within(value, 0, 1, name);
}
