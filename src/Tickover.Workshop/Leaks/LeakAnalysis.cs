using Tickover.Physics.Leaks;

namespace Tickover.Workshop.Leaks;

/// <summary>Everything a leak test says.</summary>
public sealed record LeakAnalysis
{
    /// <summary>The test.</summary>
    public required LeakSheet Sheet { get; init; }

    /// <summary>The leak and its band.</summary>
    public required LeakRate Rate { get; init; }

    /// <summary>What the largest flat panel bears.</summary>
    public required PanelFinding Panel { get; init; }

    /// <summary>The round hole that would leak as much as was seen, m; null where no leak was seen.</summary>
    public double? HoleMetres { get; init; }

    /// <summary>The round hole that leaks as much as the smallest leak this test could have seen, m.</summary>
    public required double SmallestHoleMetres { get; init; }

    /// <summary>How long the test has to be for the limit, s; null where none is set.</summary>
    public double? SecondsForLimit { get; init; }

    /// <summary>The curve.</summary>
    public required IReadOnlyList<DecayPoint> Curve { get; init; }

    /// <summary>What it comes to.</summary>
    public required LeakVerdict Verdict { get; init; }

    /// <summary>What weakens the answer.</summary>
    public required IReadOnlyList<string> Doubts { get; init; }

    /// <summary>The working, line by line.</summary>
    public required IReadOnlyList<string> Working { get; init; }
}
