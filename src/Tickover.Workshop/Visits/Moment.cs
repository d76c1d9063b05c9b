namespace Tickover.Workshop.Visits;

/// <summary>Where in the work a reading stands.</summary>
public enum Moment
{
    /// <summary>As found: before anything was touched.</summary>
    AsFound,

    /// <summary>While working, to guide the next move.</summary>
    Working,

    /// <summary>As left: what the car goes home with.</summary>
    AsLeft,
}
