namespace Tickover.Physics.Inference;

/// <summary>What is believed of a number of causes, each there or not: a probability for every set of up to a few of them. Immutable. docs/physics/inference.md.</summary>
/// <remarks>Exact but for leaving out sets larger than allowed, which is what makes it quick.</remarks>
public sealed class Belief
{
    /// <summary>Most causes that may be weighed at once.</summary>
    public const int MostCauses = 128;

    private readonly IReadOnlyList<int[]> _sets;
    private readonly double[] _weights;

    private Belief(int causes, IReadOnlyList<int[]> sets, double[] weights)
    {
        Causes = causes;
        _sets = sets;
        _weights = weights;
    }

    /// <summary>How many causes there are.</summary>
    public int Causes { get; }

    /// <summary>Probability that none of the causes is at work, 0 to 1.</summary>
    public double None => _weights[0];

    /// <summary>What is left open, bits: the entropy over the sets.</summary>
    public double EntropyBits => _weights.Sum(Surprise);

    /// <summary>The belief before anything is observed.</summary>
    /// <param name="priors">Chance of each cause, 0 to 1 without the ends.</param>
    /// <param name="atOnce">Most causes that may be at work together, 1 to 3.</param>
    /// <returns>The belief.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A chance, a number of causes or <paramref name="atOnce"/> is out of its range.</exception>
    public static Belief Before(IReadOnlyList<double> priors, int atOnce)
    {
        ArgumentNullException.ThrowIfNull(priors);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(priors.Count, MostCauses, nameof(priors));
        ArgumentOutOfRangeException.ThrowIfLessThan(atOnce, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(atOnce, 3);
        foreach (var prior in priors)
        {
            Precondition.Within(prior, double.Epsilon, 1 - 1e-12);
        }

        var sets = CauseSets.UpTo(priors.Count, atOnce);
        return new Belief(priors.Count, sets, Normal([.. sets.Select(s => CauseSets.Prior(s, priors))], out _)!);
    }

    /// <summary>Probability that a cause is at work, alone or with others.</summary>
    /// <param name="cause">Its number.</param>
    /// <returns>0 to 1.</returns>
    public double Of(int cause)
    {
        var sum = 0.0;
        for (var i = 0; i < _sets.Count; i++)
        {
            sum += Array.IndexOf(_sets[i], cause) >= 0 ? _weights[i] : 0; // inference (6)
        }

        return sum;
    }

    /// <summary>Probability that two or more causes are at work together, 0 to 1.</summary>
    /// <returns>0 to 1.</returns>
    public double SeveralAtOnce()
    {
        var sum = 0.0;
        for (var i = 0; i < _sets.Count; i++)
        {
            sum += _sets[i].Length > 1 ? _weights[i] : 0;
        }

        return sum;
    }

    /// <summary>The belief after an answer.</summary>
    /// <param name="model">What was observed.</param>
    /// <param name="answer">Number of the outcome told.</param>
    /// <param name="telling">How far the answer may be trusted.</param>
    /// <returns>The belief and how probable the answer was beforehand.</returns>
    public Observed After(OutcomeModel model, int answer, Telling telling)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentOutOfRangeException.ThrowIfNegative(answer);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(answer, model.Outcomes);
        return After(active => telling.Probability(model, answer, active.Span));
    }

    /// <summary>The belief after any evidence whose likelihood is known for every set of causes.</summary>
    /// <param name="likelihood">Chance of the evidence given the causes at work, 0 to 1; called once a set.</param>
    /// <returns>The belief and how probable the evidence was beforehand; the belief unchanged where the evidence was impossible.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A likelihood is not from 0 to 1.</exception>
    public Observed After(Func<ReadOnlyMemory<int>, double> likelihood)
    {
        ArgumentNullException.ThrowIfNull(likelihood);
        var weights = new double[_weights.Length];
        for (var i = 0; i < weights.Length; i++)
        {
            weights[i] = _weights[i] * Precondition.Within(likelihood(_sets[i]), 0, 1); // inference (5)
        }

        var normal = Normal(weights, out var chance);
        return new Observed(normal is null ? this : new Belief(Causes, _sets, normal), chance);
    }

    /// <summary>How probable each answer is beforehand, given that one is told.</summary>
    /// <param name="model">What would be observed.</param>
    /// <param name="telling">How far the answer could be trusted.</param>
    /// <returns>One chance an outcome.</returns>
    public IReadOnlyList<double> Expected(OutcomeModel model, Telling telling)
    {
        ArgumentNullException.ThrowIfNull(model);
        var chances = new double[model.Outcomes];
        for (var i = 0; i < _sets.Count; i++)
        {
            for (var answer = 0; answer < chances.Length; answer++)
            {
                chances[answer] += _weights[i] * telling.Probability(model, answer, _sets[i]);
            }
        }

        return chances;
    }

    /// <summary>What an observation is expected to tell, bits: by how much the entropy over the sets falls on average.</summary>
    /// <param name="model">What would be observed.</param>
    /// <param name="telling">How far the answer could be trusted.</param>
    /// <returns>Bits, from 0 up to <see cref="EntropyBits"/>.</returns>
    public double ExpectedBits(OutcomeModel model, Telling telling)
    {
        ArgumentNullException.ThrowIfNull(model);
        var open = Expected(model, telling).Sum(Surprise);
        for (var i = 0; i < _sets.Count; i++)
        {
            for (var answer = 0; answer < model.Outcomes; answer++)
            {
                open -= _weights[i] * Surprise(telling.Probability(model, answer, _sets[i])); // inference (8)
            }
        }

        return Math.Max(0, (1 - telling.Unsure) * open);
    }

    private static double Surprise(double chance) => chance > 0 ? -chance * Math.Log2(chance) : 0; // inference (7)

    private static double[]? Normal(double[] weights, out double sum)
    {
        sum = weights.Sum();
        if (!(sum > 0))
        {
            return null;
        }

        for (var i = 0; i < weights.Length; i++)
        {
            weights[i] /= sum;
        }

        return weights;
    }
}
