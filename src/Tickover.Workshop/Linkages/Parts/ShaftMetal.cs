namespace Tickover.Workshop.Linkages.Parts;

/// <summary>What a shaft is made of.</summary>
public enum ShaftMetal
{
    /// <summary>Steel.</summary>
    Steel,

    /// <summary>Brass, as many old spindles are.</summary>
    Brass,
}
