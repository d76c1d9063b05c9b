namespace Tickover.Workshop.Visits.Advising;

/// <summary>Advice from the mixture map of the car as it is described now. Implemented where a car document can be read.</summary>
public interface IMixtureAdvice
{
    /// <summary>The trial that promises most.</summary>
    /// <param name="record">The visit.</param>
    /// <returns>Words, or null where the map asks for nothing or there is none.</returns>
    MixtureWords? Of(VisitRecord record);
}
