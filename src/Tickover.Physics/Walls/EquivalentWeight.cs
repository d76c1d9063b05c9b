namespace Tickover.Physics.Walls;

/// <summary>Mass of an alloy that one mole of electrons takes away, as ASTM G102 defines it.</summary>
public static class EquivalentWeight
{
    /// <summary>Works it out from the alloy's make-up.</summary>
    /// <param name="elements">Elements above 1 % of the mass; their fractions need not come to one, as in ASTM G102.</param>
    /// <returns>kg/mol of electrons.</returns>
    public static double Of(IReadOnlyList<AlloyElement> elements)
    {
        ArgumentNullException.ThrowIfNull(elements);
        Precondition.Positive(elements.Count);
        var electrons = elements.Sum(e =>
            Precondition.Positive(e.Valence) * Precondition.Within(e.MassFraction, 0, 1) / Precondition.Positive(e.AtomicWeightKilogramsPerMole));
        return 1 / Precondition.Positive(electrons); // walls (5)
    }
}
