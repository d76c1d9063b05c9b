namespace Tickover.Physics.Inference;

/// <summary>A sign that each cause brings about by its own chance, whatever the others do, and that now and then comes by itself. docs/physics/inference.md (2).</summary>
/// <remarks>Pearl, <i>Probabilistic Reasoning in Intelligent Systems</i>, 1988, section 4.3.2 (from memory). Outcome 0: the sign is there; outcome 1: it is not.</remarks>
public sealed class NoisyOr : OutcomeModel
{
    /// <summary>The outcome "the sign is there".</summary>
    public const int Present = 0;

    private readonly double[] _missed;
    private readonly double _quiet;

    /// <summary>Sets it up.</summary>
    /// <param name="leak">Chance that the sign is there though none of the causes is, 0 to 1.</param>
    /// <param name="strengths">Chance that a cause alone brings the sign about, 0 to 1, one for each cause of the network.</param>
    /// <exception cref="ArgumentOutOfRangeException">A chance is not from 0 to 1.</exception>
    public NoisyOr(double leak, IReadOnlyList<double> strengths)
        : base(2)
    {
        ArgumentNullException.ThrowIfNull(strengths);
        _quiet = 1 - Chance(leak, nameof(leak));
        _missed = [.. strengths.Select(s => 1 - Chance(s, nameof(strengths)))];
    }

    /// <inheritdoc />
    public override double Probability(int outcome, ReadOnlySpan<int> active)
    {
        var absent = _quiet;
        foreach (var cause in active)
        {
            absent *= _missed[cause]; // inference (2)
        }

        return outcome == Present ? 1 - absent : absent;
    }
}
