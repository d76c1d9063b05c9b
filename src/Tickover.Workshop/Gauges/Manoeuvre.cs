namespace Tickover.Workshop.Gauges;

/// <summary>A manoeuvre that tells something about linked tanks.</summary>
public enum Manoeuvre
{
    /// <summary>A long bend to the left, then straight on.</summary>
    LongBend = 0,

    /// <summary>The steady circle of ISO 4138, to the left.</summary>
    Circle = 1,

    /// <summary>The double lane change of ISO 3888-1.</summary>
    LaneChange = 2,

    /// <summary>The obstacle avoidance of ISO 3888-2.</summary>
    Obstacle = 3,

    /// <summary>A roundabout one way, later one the other way.</summary>
    Roundabouts = 4,

    /// <summary>Hard braking, a stop, and off again uphill.</summary>
    StopAndHill = 5,
}
