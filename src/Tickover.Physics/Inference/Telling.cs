namespace Tickover.Physics.Inference;

/// <summary>How an outcome is told: not always rightly, and sometimes not at all. docs/physics/inference.md (4).</summary>
/// <remarks><c>default</c> is a witness who never errs and always answers.</remarks>
public readonly record struct Telling
{
    /// <summary>Sets it up.</summary>
    /// <param name="wrong">Chance that an answer is another outcome than the true one, 0 to 1; the others share it evenly.</param>
    /// <param name="unsure">Chance that there is no answer, whatever the outcome, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A chance is not from 0 to 1.</exception>
    public Telling(double wrong, double unsure)
    {
        Wrong = Precondition.Within(wrong, 0, 1);
        Unsure = Precondition.Within(unsure, 0, 1);
    }

    /// <summary>Chance that an answer is not the true outcome, 0 to 1.</summary>
    public double Wrong { get; }

    /// <summary>Chance that there is no answer, 0 to 1.</summary>
    public double Unsure { get; }

    /// <summary>Chance that an answer is told, given that one is told at all.</summary>
    /// <param name="model">What is observed.</param>
    /// <param name="answer">Number of the outcome that is told.</param>
    /// <param name="active">Numbers of the causes at work.</param>
    /// <returns>0 to 1; the answers add up to one.</returns>
    public double Probability(OutcomeModel model, int answer, ReadOnlySpan<int> active)
    {
        ArgumentNullException.ThrowIfNull(model);
        var truly = model.Probability(answer, active);
        return (1 - Wrong) * truly + Wrong * (1 - truly) / (model.Outcomes - 1); // inference (4)
    }
}
