namespace Tickover.Physics.Balancing;

/// <summary>What one barrel reads, and what each turn of each adjuster does to it, learned from every reading: a recursive least-squares row with its uncertainty.</summary>
/// <remarks>
/// The state is the level and the gains; a turn moves the level by gain × turns, a reading corrects both, docs/physics/balancing.md (4) to (7).
/// With no noise and equal priors a before-and-after pair gives Broyden's rank-one update. Numbers only; not thread-safe.
/// </remarks>
public sealed class InfluenceRow
{
    private readonly double[] _mean;
    private readonly double[,] _covariance;

    /// <summary>Begins with what is known beforehand.</summary>
    /// <param name="level">Level before any reading, in the unit of the readings.</param>
    /// <param name="levelVariance">Its variance; large where nothing is known.</param>
    /// <param name="gains">Expected change of the reading a turn, by adjuster.</param>
    /// <param name="gainVariances">Their variances; as many.</param>
    public InfluenceRow(double level, double levelVariance, IReadOnlyList<double> gains, IReadOnlyList<double> gainVariances)
    {
        ArgumentNullException.ThrowIfNull(gains);
        ArgumentNullException.ThrowIfNull(gainVariances);
        ArgumentOutOfRangeException.ThrowIfNotEqual(gainVariances.Count, gains.Count, nameof(gainVariances));
        ArgumentOutOfRangeException.ThrowIfNegative(levelVariance);
        _mean = [level, .. gains];
        _covariance = new double[_mean.Length, _mean.Length];
        _covariance[0, 0] = levelVariance;
        for (var j = 0; j < gains.Count; j++)
        {
            _covariance[j + 1, j + 1] = gainVariances[j];
        }
    }

    /// <summary>The level now.</summary>
    public double Level => _mean[0];

    /// <summary>Variance of the level.</summary>
    public double LevelVariance => _covariance[0, 0];

    /// <summary>Gain of an adjuster.</summary>
    /// <param name="adjuster">Its place in the list given at the start.</param>
    /// <returns>Change of the reading a turn.</returns>
    public double Gain(int adjuster) => _mean[adjuster + 1];

    /// <summary>Variance of a gain.</summary>
    /// <param name="adjuster">Its place in the list given at the start.</param>
    /// <returns>In the square of the gain's unit.</returns>
    public double GainVariance(int adjuster) => _covariance[adjuster + 1, adjuster + 1];

    /// <summary>An adjuster was turned.</summary>
    /// <param name="adjuster">Its place in the list.</param>
    /// <param name="turns">Turns.</param>
    /// <param name="turnsVariance">How unsure the turn itself is, turns²: backlash, the eye.</param>
    public void Turn(int adjuster, double turns, double turnsVariance = 0)
    {
        var j = adjuster + 1;
        _mean[0] += turns * _mean[j]; // (4)
        for (var k = 0; k < _mean.Length; k++)
        {
            _covariance[0, k] += turns * _covariance[j, k]; // (5), rows first
        }

        for (var k = 0; k < _mean.Length; k++)
        {
            _covariance[k, 0] += turns * _covariance[k, j]; // then columns
        }

        _covariance[0, 0] += turnsVariance * ((_mean[j] * _mean[j]) + _covariance[j, j]);
    }

    /// <summary>A reading was taken.</summary>
    /// <param name="value">The reading.</param>
    /// <param name="variance">Its variance; above zero, or zero where it is taken as exact and the level is not yet certain.</param>
    /// <returns>How far the reading lay from what was expected, in standard deviations.</returns>
    public double Read(double value, double variance)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(variance);
        var expected = variance + _covariance[0, 0];
        if (!(expected > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(variance), variance, "A reading without noise of a level without uncertainty leaves nothing to learn from.");
        }

        var off = value - _mean[0];
        var size = _mean.Length;
        var gain = new double[size];
        for (var k = 0; k < size; k++)
        {
            gain[k] = _covariance[k, 0] / expected; // (6)
        }

        var row = new double[size];
        for (var k = 0; k < size; k++)
        {
            row[k] = _covariance[0, k];
            _mean[k] += gain[k] * off;
        }

        for (var a = 0; a < size; a++)
        {
            for (var b = 0; b < size; b++)
            {
                _covariance[a, b] -= gain[a] * row[b]; // (7)
            }
        }

        return off / Math.Sqrt(expected);
    }

    /// <summary>Speed, temperature or something unseen has changed: level and gains are less sure than they were.</summary>
    /// <param name="levelVariance">Added to the level's variance.</param>
    /// <param name="gainFactor">Factor on the gains' variances, one or more.</param>
    public void Loosen(double levelVariance, double gainFactor = 1)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(levelVariance);
        ArgumentOutOfRangeException.ThrowIfLessThan(gainFactor, 1);
        _covariance[0, 0] += levelVariance;
        for (var j = 1; j < _mean.Length; j++)
        {
            _covariance[j, j] *= gainFactor; // only what is on the diagonal: more uncertain, never less possible
        }
    }

    /// <summary>What the reading would be after some turns.</summary>
    /// <param name="turns">Turns by adjuster, with their places; those not named stay.</param>
    /// <returns>Expected level and its variance.</returns>
    public (double Level, double Variance) Expect(IReadOnlyList<(int Adjuster, double Turns)> turns)
    {
        ArgumentNullException.ThrowIfNull(turns);
        var (level, variance) = (_mean[0], _covariance[0, 0]);
        foreach (var (adjuster, x) in turns)
        {
            level += x * _mean[adjuster + 1];
            variance += 2 * x * _covariance[0, adjuster + 1];
            foreach (var (other, y) in turns)
            {
                variance += x * y * _covariance[adjuster + 1, other + 1];
            }
        }

        return (level, Math.Max(variance, 0));
    }
}
