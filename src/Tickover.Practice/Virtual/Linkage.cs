namespace Tickover.Practice.Virtual;

/// <summary>Where every carburettor's plates stand: docs/physics/practice.md (6) and (7).</summary>
internal sealed class Linkage
{
    private readonly IReadOnlyList<VirtualCarburettor> _carburettors;

    public Linkage(IReadOnlyList<VirtualCarburettor> carburettors, double idleOpening)
    {
        _carburettors = carburettors;
        IdleOpening = idleOpening;
    }

    /// <summary>Opening the linkage was laid out for at idle, degrees; levers clamped wrong are right here.</summary>
    public double IdleOpening { get; }

    /// <summary>Whether rods are off: each carburettor on its own stop.</summary>
    public bool Apart { get; set; }

    /// <summary>Where the linkage comes to rest: the most restrictive stop holds it, less the play of the way there.</summary>
    public double Rest()
    {
        var rest = 0.0;
        foreach (var one in _carburettors)
        {
            if (one.Stop is not null)
            {
                rest = Math.Max(rest, one.Stop.Effect - one.Ahead(0) - one.Play); // practice (6)
            }
        }

        return rest;
    }

    /// <summary>Opening of a carburettor's plates, degrees.</summary>
    /// <param name="carburettor">Which, from 0.</param>
    /// <param name="linkage">Where the linkage stands, degrees.</param>
    public double Opening(int carburettor, double linkage)
    {
        var one = _carburettors[carburettor];
        var driven = linkage + one.Ahead(Math.Max(0, linkage - IdleOpening));
        return one.Stop is null ? driven : Apart ? one.Stop.Effect : Math.Max(one.Stop.Effect, driven); // practice (7)
    }
}
