namespace Tickover.Physics.Walls;

/// <summary>Point estimates of Gumbel's two figures. docs/physics/walls.md (12) to (14).</summary>
/// <remarks>They say nothing of their own uncertainty, which is large for few readings: bands come from <see cref="PitPosterior"/>.</remarks>
public static class GumbelEstimate
{
    private const int MostSteps = 200;
    private const double Settled = 1e-13;

    /// <summary>By mean and standard deviation.</summary>
    /// <param name="depthsMetres">Deepest pits of patches, m; two and more, not all the same.</param>
    /// <returns>The estimate; null where the depths do not scatter.</returns>
    public static Gumbel? Moments(IReadOnlyList<double> depthsMetres)
    {
        if (Scatter(depthsMetres) is not (var mean, > 0 and var deviation))
        {
            return null;
        }

        var scale = deviation * Math.Sqrt(6) / Math.PI; // walls (12)
        return new Gumbel(mean - WallsConstants.EulerGamma * scale, scale);
    }

    /// <summary>By probability-weighted moments.</summary>
    /// <param name="depthsMetres">Deepest pits of patches, m; two and more, not all the same.</param>
    /// <returns>The estimate; null where the depths do not scatter.</returns>
    public static Gumbel? WeightedMoments(IReadOnlyList<double> depthsMetres)
    {
        if (Scatter(depthsMetres) is not (var mean, > 0))
        {
            return null;
        }

        var n = depthsMetres.Count;
        var b1 = depthsMetres.Order().Select((x, i) => i * x / (n - 1)).Sum() / n;
        var scale = (2 * b1 - mean) / Math.Log(2); // walls (13)
        return new Gumbel(mean - WallsConstants.EulerGamma * scale, scale);
    }

    /// <summary>By greatest likelihood.</summary>
    /// <param name="depthsMetres">Deepest pits of patches, m; two and more, not all the same.</param>
    /// <returns>The estimate; null where the depths do not scatter.</returns>
    public static Gumbel? MaximumLikelihood(IReadOnlyList<double> depthsMetres)
    {
        if (Moments(depthsMetres) is not { } start)
        {
            return null;
        }

        var (least, mean) = (depthsMetres.Min(), depthsMetres.Average());
        var (low, high) = (start.ScaleMetres / 100, start.ScaleMetres * 100);
        // The right side of that equation less α falls all the way, so halving is certain; Newton saves nothing on so few readings.
        for (var step = 0; step < MostSteps && high - low > Settled * high; step++)
        {
            var middle = (low + high) / 2;
            (low, high) = Wanted(depthsMetres, least, mean, middle) > middle ? (middle, high) : (low, middle);
        }

        var scale = (low + high) / 2;
        return new Gumbel(least - scale * Math.Log(depthsMetres.Average(x => Math.Exp(-(x - least) / scale))), scale); // walls (14)
    }

    private static double Wanted(IReadOnlyList<double> depths, double least, double mean, double scale)
    {
        var weights = depths.Select(x => Math.Exp(-(x - least) / scale)).ToArray();
        return mean - depths.Zip(weights, (x, w) => x * w).Sum() / weights.Sum(); // walls (14)
    }

    private static (double Mean, double Deviation)? Scatter(IReadOnlyList<double> depths)
    {
        ArgumentNullException.ThrowIfNull(depths);
        if (depths.Count < 2)
        {
            return null;
        }

        var mean = depths.Average(d => Precondition.Finite(d));
        return depths.Max() > depths.Min() ? (mean, Math.Sqrt(depths.Sum(x => (x - mean) * (x - mean)) / (depths.Count - 1))) : null;
    }
}
