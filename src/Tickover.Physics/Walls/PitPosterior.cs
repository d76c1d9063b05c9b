namespace Tickover.Physics.Walls;

/// <summary>What readings of some patches say of the patches not read. docs/physics/walls.md (15) to (18).</summary>
/// <remarks>
/// All pairs (λ, α) that the readings allow, each with its weight. The prior is even in λ and in ln α: with measured depths only, a band of the
/// deepest pit to come then holds it exactly as often as it says, for as few readings as there are (right-invariant prior of a location and
/// a scale; J. O. Berger, <i>Statistical Decision Theory and Bayesian Analysis</i>, 2nd ed., 6.6, from memory). Not thread-safe to build; safe to read.
/// </remarks>
public sealed class PitPosterior
{
    private const double Low = 0.05, High = 0.95;
    private const double Far = 1e-12;
    private const int Halvings = 45;

    private readonly PitNode[] _nodes;

    private PitPosterior(PitNode[] nodes, Validity validity, Gumbel likeliest)
    {
        (_nodes, Validity, Likeliest) = (nodes, validity, likeliest);
    }

    /// <summary>Whether there were readings enough for the figure to be worth much.</summary>
    public Validity Validity { get; }

    /// <summary>The pair with the most weight, for drawing one line; never for a verdict.</summary>
    public Gumbel Likeliest { get; }

    /// <summary>Weighs the readings.</summary>
    /// <param name="sample">The readings.</param>
    /// <returns>The posterior; null for fewer than <see cref="PitSample.FewestDepths"/> measured depths.</returns>
    public static PitPosterior? Of(PitSample sample)
    {
        ArgumentNullException.ThrowIfNull(sample);
        const double enough = 8;
        if (sample.DepthsMetres.Count < PitSample.FewestDepths)
        {
            return null;
        }

        var nodes = new PitGrid(sample).Nodes();
        var likeliest = nodes.MaxBy(n => n.Weight);
        return new PitPosterior(
            nodes,
            Validity.Of("patches measured", sample.DepthsMetres.Count, (enough, double.PositiveInfinity), (PitSample.FewestDepths, double.PositiveInfinity)),
            new Gumbel(likeliest.LogSum * likeliest.ScaleMetres, likeliest.ScaleMetres));
    }

    /// <summary>Chance that the deepest pit of patches not read is no deeper than this.</summary>
    /// <param name="depthMetres">Depth, m.</param>
    /// <param name="patches">T, how many patches were not read; not negative, need not be whole.</param>
    /// <returns>0 to 1, with what is not known of λ and α taken in.</returns>
    public double Below(double depthMetres, double patches)
    {
        var sum = 0.0;
        foreach (var node in _nodes)
        {
            sum += node.Weight * node.Below(depthMetres, patches);
        }

        return Math.Min(1, sum); // walls (17); the weights come to one but for the last bit
    }

    /// <summary>The deepest pit of patches not read.</summary>
    /// <param name="patches">T, how many patches were not read; above zero.</param>
    /// <returns>The band that holds it nine times in ten.</returns>
    public DepthBand Deepest(double patches)
    {
        Precondition.Positive(patches);
        return new DepthBand(Depth(Low, patches), Depth(0.5, patches), Depth(High, patches));
    }

    /// <summary>The chance that the deepest pit of patches not read is deeper than a depth, with the band its own uncertainty leaves.</summary>
    /// <param name="deepMetres">Depth for the lower end, the middle and the upper end, m.</param>
    /// <param name="patches">T, how many patches were not read; not negative.</param>
    /// <returns>The chance.</returns>
    public ChanceBand Deeper(DepthBand deepMetres, double patches) => new(
        Quantile(Low, deepMetres.LowMetres, patches),
        1 - Below(deepMetres.MiddleMetres, patches),
        Quantile(High, deepMetres.HighMetres, patches)); // walls (18)

    private double Quantile(double part, double depth, double patches)
    {
        var chances = Array.ConvertAll(_nodes, n => 1 - n.Below(depth, patches));
        var weights = Array.ConvertAll(_nodes, n => n.Weight);
        Array.Sort(chances, weights);
        var sum = 0.0;
        for (var i = 0; i < chances.Length; i++)
        {
            sum += weights[i];
            if (sum >= part)
            {
                return chances[i];
            }
        }

        return chances[^1];
    }

    private double Depth(double chance, double patches)
    {
        var low = _nodes.Min(n => n.Depth(Far, patches));
        var high = _nodes.Max(n => n.Depth(1 - Far, patches));
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Below(middle, patches) < chance ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }
}
