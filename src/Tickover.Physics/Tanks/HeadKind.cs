namespace Tickover.Physics.Tanks;

/// <summary>How the ends of a round tank bulge.</summary>
public enum HeadKind
{
    /// <summary>Half an ellipse turned about the axis; as deep as the radius: half a ball.</summary>
    Ellipse,

    /// <summary>A cap of a ball that meets the wall with an edge.</summary>
    Dish,

    /// <summary>A cone.</summary>
    Cone,
}
