namespace Tickover.Workshop.Logs;

/// <summary>What a whole log says of the accelerator pump.</summary>
public sealed record LogPump
{
    /// <summary>The openings, in order of time.</summary>
    public IReadOnlyList<LogShot> Shots { get; init; } = [];

    /// <summary>The verdict most openings that could be judged come to; null where none could.</summary>
    public TipInVerdict? Verdict { get; init; }

    /// <summary>What they say together: a sentence or two; where none could be judged, which drive would show one.</summary>
    public string Words { get; init; } = "";

    /// <summary>What to do, in order; one change at a time.</summary>
    public IReadOnlyList<string> Advice { get; init; } = [];
}
