namespace Tickover.Physics.Inference;

/// <summary>An observation of several outcomes in which one of the causes at work shows itself, each as likely as the next. docs/physics/inference.md (3).</summary>
/// <remarks>Causes the observation does not speak of change nothing; with none that it speaks of, the outcome is that of an engine without them.</remarks>
public sealed class SharedOutcome : OutcomeModel
{
    private const double Sum = 1e-6;

    private readonly double[] _otherwise;
    private readonly double[]?[] _byCause;

    /// <summary>Sets it up.</summary>
    /// <param name="otherwise">Chance of each outcome where no cause it speaks of is at work; adds up to one.</param>
    /// <param name="byCause">Chance of each outcome by cause, one entry for each cause of the network; null where it does not speak of the cause.</param>
    /// <exception cref="ArgumentException">Chances do not add up to one, or their number differs.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A chance is not from 0 to 1.</exception>
    public SharedOutcome(IReadOnlyList<double> otherwise, IReadOnlyList<IReadOnlyList<double>?> byCause)
        : base(otherwise?.Count ?? 0)
    {
        ArgumentNullException.ThrowIfNull(otherwise);
        ArgumentNullException.ThrowIfNull(byCause);
        _otherwise = Checked(otherwise, nameof(otherwise));
        _byCause = [.. byCause.Select(c => c is null ? null : Checked(c, nameof(byCause)))];
    }

    /// <inheritdoc />
    public override double Probability(int outcome, ReadOnlySpan<int> active)
    {
        var (sum, spoken) = (0.0, 0);
        foreach (var cause in active)
        {
            if (_byCause[cause] is { } chances)
            {
                sum += chances[outcome];
                spoken++;
            }
        }

        return spoken == 0 ? _otherwise[outcome] : sum / spoken; // inference (3)
    }

    private double[] Checked(IReadOnlyList<double> chances, string name)
    {
        if (chances.Count != Outcomes || chances.Count < 2 || Math.Abs(chances.Sum() - 1) > Sum)
        {
            throw new ArgumentException($"{Outcomes} chances, at least two, must add up to one", name);
        }

        return [.. chances.Select(c => Chance(c, name))];
    }
}
