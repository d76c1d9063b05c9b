namespace Tickover.Workshop.Visits.Advising;

/// <summary>What advisers look at.</summary>
/// <param name="Record">The visit.</param>
/// <param name="Now">The moment, with the workshop's offset from Greenwich.</param>
/// <param name="Mixture">The car's mixture map, where there is one.</param>
public sealed record AdviceContext(VisitRecord Record, DateTimeOffset Now, IMixtureAdvice? Mixture = null)
{
    /// <summary>Today by the workshop's calendar.</summary>
    public DateOnly Today => DateOnly.FromDateTime(Now.DateTime);

    /// <summary>The stage in hand, or the one that comes next.</summary>
    public Stage Stage => Route.Next(Record);

    /// <summary>Whether that stage has been begun.</summary>
    public bool IsBegun => Route.StateOf(Record, Stage) == StageState.Begun;
}
