namespace Tickover.Workshop.Linkages.Parts;

/// <summary>What a shaft is carried by, and so whether it moves when the engine grows warm.</summary>
public enum ShaftMount
{
    /// <summary>Bulkhead or chassis: it stays.</summary>
    Body,

    /// <summary>The inlet manifold: it grows.</summary>
    Manifold,
}
