using Tickover.Workshop.Visits;

namespace Tickover.Reports.HandOver;

/// <summary>What an account needs that is not in the visit's record.</summary>
public sealed record HandOverSettings
{
    /// <summary>The day the account is written.</summary>
    public required DateOnly On { get; init; }

    /// <summary>Address of the visit's record, printed as text and as a square code; empty where there is none to be reached.</summary>
    public string Address { get; init; } = "";

    /// <summary>Gives a photograph as a JPEG file; null where it is not to be had.</summary>
    public Func<Id<Photograph>, byte[]?> Picture { get; init; } = _ => null;
}
