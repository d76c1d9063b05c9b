namespace Tickover.Workshop.Logs;

/// <summary>What the figures of a throttle channel mean.</summary>
public enum ThrottleScale
{
    /// <summary>Anything that rises evenly with the opening (%, V, part of one); shut and wide open have to be found or told.</summary>
    Relative,

    /// <summary>Degrees of the plate from seated.</summary>
    Degrees,
}
