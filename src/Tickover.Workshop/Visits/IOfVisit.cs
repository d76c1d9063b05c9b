namespace Tickover.Workshop.Visits;

/// <summary>Belongs to one visit.</summary>
public interface IOfVisit
{
    /// <summary>The visit.</summary>
    Id<Visit> Visit { get; }
}
