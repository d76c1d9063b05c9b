namespace Tickover.Workshop.JetChoice;

/// <summary>What came of a list of candidates.</summary>
internal sealed class JetContest
{
    /// <summary>The best sets that keep choke and tube.</summary>
    internal Contest Kept { get; } = new();

    /// <summary>The best sets of all.</summary>
    internal Contest All { get; } = new();

    /// <summary>Sets tried.</summary>
    internal long Tried { get; private set; }

    internal void Take(Contest best, bool keeps, long tried)
    {
        All.Take(best);
        Tried += tried;
        if (keeps)
        {
            Kept.Take(best);
        }
    }
}
