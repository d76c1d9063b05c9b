namespace Tickover.Workshop.Visits.Authorities;

/// <summary>Whom to defer to on one topic in one country.</summary>
/// <param name="Topic">The topic.</param>
/// <param name="Name">Law, standard or guidance by its name.</param>
/// <param name="Body">Who issues or enforces it; empty in the workshop's own words.</param>
/// <param name="Source">Where the entry was taken from.</param>
/// <param name="Mark">How far it was looked up.</param>
public sealed record Authority(HazardTopic Topic, string Name, string Body, string Source, AuthorityMark Mark)
{
    /// <summary>The entry as one sentence, with its mark.</summary>
    public string Words => Mark switch
    {
        AuthorityMark.OwnWords => Name,
        AuthorityMark.FromMemory => $"{Name} ({Body}; from memory, check the edition)",
        _ => $"{Name} ({Body})",
    };
}
