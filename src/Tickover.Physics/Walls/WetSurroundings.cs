namespace Tickover.Physics.Walls;

/// <summary>How wet and salty it is where two metals touch.</summary>
public enum WetSurroundings
{
    /// <summary>Indoors, dry, temperature and dampness kept.</summary>
    Controlled,

    /// <summary>Indoors without that: a garage, seldom out in the rain.</summary>
    Normal,

    /// <summary>Out of doors, road salt, a pad that stays wet.</summary>
    Harsh,
}
