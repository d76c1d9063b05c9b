namespace Tickover.Workshop.Visits.Advising;

/// <summary>Looks at a visit from one side and says what it would do next.</summary>
public interface IAdviser
{
    /// <summary>What it looks at, such as "gates".</summary>
    string Name { get; }

    /// <summary>Its advice, the more useful first; none where it has nothing to say.</summary>
    /// <param name="context">The visit and the day.</param>
    /// <returns>The advice.</returns>
    IEnumerable<Advice> Of(AdviceContext context);
}
