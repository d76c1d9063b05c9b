using Tickover.Physics.Balancing;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>What is known of the barrels at idle or at one held speed: a row of influence for each.</summary>
internal sealed class Condition
{
    private const double LevelUnsure = 0.5;                 // part of the mean before a barrel was read
    private readonly Dictionary<string, int> _places = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Begins a condition with the first round read in it.</summary>
    /// <param name="plan">The engine.</param>
    /// <param name="heldRpm">Speed held; null for idle.</param>
    /// <param name="mean">Mean air, kg/h.</param>
    public Condition(EnginePlan plan, double? heldRpm, double mean)
    {
        (Plan, HeldRpm, Nominal) = (plan, heldRpm, new NominalGains(plan, heldRpm is null, mean));
        for (var j = 0; j < plan.Adjusters.Count; j++)
        {
            _places[plan.Adjusters[j].Key] = j;
        }

        Rows = [.. plan.Barrels.Select(b => Row(b.Number, mean))];
    }

    /// <summary>The engine.</summary>
    public EnginePlan Plan { get; }

    /// <summary>Speed held; null for idle.</summary>
    public double? HeldRpm { get; }

    /// <summary>Whether at idle.</summary>
    public bool IsIdle => HeldRpm is null;

    /// <summary>What physics expects of a turn.</summary>
    public NominalGains Nominal { get; }

    /// <summary>A row for each barrel.</summary>
    public IReadOnlyList<InfluenceRow> Rows { get; }

    /// <summary>Engine speed when it was last read, rpm; null where it was not noted.</summary>
    public double? Rpm { get; set; }

    /// <summary>Mean of the levels, kg/h.</summary>
    public double Mean => Rows.Average(r => r.Level);

    /// <summary>Place of an adjuster in the rows.</summary>
    /// <param name="adjuster">The adjuster.</param>
    /// <returns>From zero.</returns>
    public int Place(Adjuster adjuster) => _places[adjuster.Key];

    /// <summary>Change of the air of an adjuster's own barrels a turn, as learned, with its variance.</summary>
    /// <param name="adjuster">The adjuster.</param>
    /// <returns>kg/h a turn.</returns>
    public (double Gain, double Variance) Learned(Adjuster adjuster)
    {
        var place = Place(adjuster);
        var rows = adjuster.Barrels.Select(b => Rows[b - 1]).ToList();
        return (rows.Average(r => r.Gain(place)), rows.Average(r => r.GainVariance(place)) / rows.Count);
    }

    private InfluenceRow Row(int barrel, double mean)
    {
        var gains = Plan.Adjusters.Select(a => Nominal.For(a, barrel)).ToList();
        return new InfluenceRow(mean, LevelUnsure * mean * LevelUnsure * mean, gains.ConvertAll(g => g.Mean), gains.ConvertAll(g => g.Variance));
    }
}
