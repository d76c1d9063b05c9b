namespace Tickover.Physics.Walls;

/// <summary>Two metals that touch each other in the wet. docs/physics/walls.md (6), (7).</summary>
/// <remarks>A coated metal counts with its coat and with the base that pinholes lay bare, whichever is worse for it.</remarks>
public sealed record GalvanicCouple
{
    private GalvanicCouple(MetalProperties wall, MetalProperties contact, WetSurroundings surroundings)
    {
        (Wall, Contact) = (wall.Metal, contact.Metal);
        LimitVolts = Limit(surroundings);
        double[] walls = [wall.SurfaceIndexVolts, wall.BaseIndexVolts];
        double[] contacts = [contact.SurfaceIndexVolts, contact.BaseIndexVolts];
        var differences = walls.SelectMany(w => contacts.Select(c => w - c)).ToArray();
        // A wall whose one face is eaten is in danger, even if the other eats the contact.
        DifferenceVolts = differences.Max() > 0 ? differences.Max() : differences.Min();
    }

    /// <summary>The metal of the wall.</summary>
    public Metal Wall { get; }

    /// <summary>The metal that touches it.</summary>
    public Metal Contact { get; }

    /// <summary>Anodic index of the wall less that of the contact, V; above zero the wall is eaten, below the contact.</summary>
    public double DifferenceVolts { get; }

    /// <summary>The most that is let pass in these surroundings, V.</summary>
    public double LimitVolts { get; }

    /// <summary>Whether the wall is the metal that is eaten.</summary>
    public bool WallIsEaten => DifferenceVolts > 0;

    /// <summary>Whether the difference is let pass.</summary>
    public bool IsCompatible => Math.Abs(DifferenceVolts) <= LimitVolts + Rounding; // walls (6)

    // The table has two decimals; 0.85 - 0.60 must not fail at 0.25 for its last bit.
    private static double Rounding => 1e-9;

    /// <summary>The couple of two metals.</summary>
    /// <param name="wall">The wall.</param>
    /// <param name="contact">What touches it.</param>
    /// <param name="surroundings">How wet it is there.</param>
    /// <returns>The couple.</returns>
    public static GalvanicCouple Of(Metal wall, Metal contact, WetSurroundings surroundings) =>
        new(MetalTable.Of(wall), MetalTable.Of(contact), surroundings);

    /// <summary>The most difference let pass, V: the usual practice beside MIL-STD-889.</summary>
    /// <param name="surroundings">How wet it is.</param>
    /// <returns>V.</returns>
    public static double Limit(WetSurroundings surroundings) => surroundings switch
    {
        WetSurroundings.Controlled => 0.50,
        WetSurroundings.Normal => 0.25,
        _ => 0.15,
    };

    /// <summary>How many times faster the eaten metal goes for the noble one beside it.</summary>
    /// <param name="nobleSquareMetres">Wet area of the metal that is not eaten, m²; not negative.</param>
    /// <param name="eatenSquareMetres">Wet area of the metal that is eaten, m²; above zero.</param>
    /// <returns>1 and more: all the oxygen caught by both has to be paid for by one.</returns>
    public static double AreaEffect(double nobleSquareMetres, double eatenSquareMetres) =>
        1 + Precondition.NotNegative(nobleSquareMetres) / Precondition.Positive(eatenSquareMetres); // walls (7)
}
