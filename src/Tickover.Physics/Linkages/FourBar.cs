namespace Tickover.Physics.Linkages;

/// <summary>A planar four-bar: two levers on parallel shafts and a rod between them. docs/physics/linkages.md (1), (2), (4), (5).</summary>
/// <remarks>Angles from the line of the two shafts, anticlockwise, as in R. L. Norton, <i>Design of Machinery</i>, ch. 4 (from memory).</remarks>
public sealed record FourBar
{
    /// <summary>a, the driving lever, m; above zero.</summary>
    public required double CrankMetres { get; init; }

    /// <summary>b, the rod, m; above zero.</summary>
    public required double CouplerMetres { get; init; }

    /// <summary>c, the driven lever, m; above zero.</summary>
    public required double FollowerMetres { get; init; }

    /// <summary>d, between the shafts, m; above zero.</summary>
    public required double GroundMetres { get; init; }

    /// <summary>Its three ratios.</summary>
    public FreudensteinConstants Constants => new(
        GroundMetres / CrankMetres,
        GroundMetres / FollowerMetres,
        (CrankMetres * CrankMetres - CouplerMetres * CouplerMetres + FollowerMetres * FollowerMetres + GroundMetres * GroundMetres)
            / (2 * CrankMetres * FollowerMetres)); // linkages (2)

    /// <summary>Both ways it goes together at a position of the crank.</summary>
    /// <param name="crankRadians">θ2, radians.</param>
    /// <returns>Open, then crossed assembly; null where the rod does not reach.</returns>
    public (FourBarPose Open, FourBarPose Crossed)? At(double crankRadians)
    {
        Precondition.Finite(crankRadians);
        var k = Constants;
        var (sin, cos) = Math.SinCos(crankRadians);
        var a = cos - k.K1 - k.K2 * cos + k.K3;
        var b = -2 * sin;
        var c = k.K1 - (k.K2 + 1) * cos + k.K3;
        var root = b * b - 4 * a * c;
        if (root < 0)
        {
            return null;
        }

        // Written by the two arguments of the arc tangent, so that a = 0 needs no case of its own.
        var open = 2 * Math.Atan2(-b - Math.Sqrt(root), 2 * a);      // linkages (4)
        var crossed = 2 * Math.Atan2(-b + Math.Sqrt(root), 2 * a);
        return (Pose(crankRadians, open), Pose(crankRadians, crossed));
    }

    /// <summary>How fast the follower turns beside the crank.</summary>
    /// <param name="crankRadians">θ2, radians.</param>
    /// <param name="pose">How it stands.</param>
    /// <returns>dθ4/dθ2, 1; infinite where rod and follower are in line.</returns>
    public double Rate(double crankRadians, FourBarPose pose) =>
        CrankMetres * Math.Sin(crankRadians - pose.CouplerRadians)
        / (FollowerMetres * Math.Sin(pose.FollowerRadians - pose.CouplerRadians)); // linkages (5)

    private FourBarPose Pose(double crank, double follower)
    {
        // The rod runs from the crank's pin to the follower's.
        var x = GroundMetres + FollowerMetres * Math.Cos(follower) - CrankMetres * Math.Cos(crank);
        var y = FollowerMetres * Math.Sin(follower) - CrankMetres * Math.Sin(crank);
        return new FourBarPose(Math.Atan2(y, x), Math.IEEERemainder(follower, 2 * Math.PI));
    }
}
