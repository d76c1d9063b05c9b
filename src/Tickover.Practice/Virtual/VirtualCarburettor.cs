namespace Tickover.Practice.Virtual;

/// <summary>One carburettor as the linkage sees it.</summary>
internal sealed class VirtualCarburettor
{
    /// <summary>Number from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Its stop screw, degrees a turn; null where it follows others and has none.</summary>
    public Screw? Stop { get; init; }

    /// <summary>Rods, couplings or links that put it before or behind the linkage, degrees a turn.</summary>
    public required IReadOnlyList<Screw> Joints { get; init; }

    /// <summary>Intended lost motion before it follows, degrees.</summary>
    public double Delay { get; init; }

    /// <summary>Play of ball ends between the linkage and it, degrees.</summary>
    public double Play { get; set; }

    /// <summary>How much faster (or slower) than the linkage it opens, of the linkage's movement.</summary>
    public double RateError { get; set; }

    /// <summary>Standard deviation of where its plates come to rest each time, degrees.</summary>
    public double Unrest { get; set; }

    /// <summary>How far before the linkage it stands, degrees.</summary>
    /// <param name="moved">How far the linkage has moved from where it rests at idle, degrees.</param>
    public double Ahead(double moved)
    {
        var sum = (RateError * moved) - Delay;
        foreach (var joint in Joints)
        {
            sum += joint.Effect;
        }

        return sum;
    }
}
