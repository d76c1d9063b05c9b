using System.Text.Json.Serialization;
using Tickover.Workshop.Cars;

namespace Tickover.Bench.Road;

/// <summary>What became of one car.</summary>
internal sealed record RoadCase
{
    [JsonInclude]
    internal required string Name { get; init; }

    /// <summary>Weighted part in target as arrived, then after each run's change; the last one holds for ever after.</summary>
    [JsonInclude]
    internal required IReadOnlyList<double> Scores { get; init; }

    /// <summary>The best set it had at any time; null in a case read back.</summary>
    [JsonIgnore]
    internal Car? Best { get; init; }

    /// <summary>Cells foretold and how many of them the truth then lay within the 90 % band.</summary>
    [JsonInclude]
    internal Tally Foretold { get; init; }

    /// <summary>Readings left out and foretold from the others, and how many lay within their 90 % band.</summary>
    [JsonInclude]
    internal Tally LeftOut { get; init; }

    /// <summary>Runs it took to have the asked part in target; null where it never had.</summary>
    internal int? RunsTo(double asked) => Scores.Select((s, i) => (s, i)).Where(x => x.s >= asked).Select(x => (int?)x.i).FirstOrDefault();

    /// <summary>Part in target after so many runs.</summary>
    internal double After(int runs) => Scores[Math.Min(runs, Scores.Count - 1)];
}
