namespace Tickover.Workshop.Linkages.Parts;

/// <summary>Which way round a shaft turns, as seen looking along the direction its axis is given in.</summary>
public enum TurningSense
{
    /// <summary>Clockwise: the way a right-hand screw is driven in.</summary>
    Clockwise = 1,

    /// <summary>Anticlockwise.</summary>
    Anticlockwise = -1,
}
