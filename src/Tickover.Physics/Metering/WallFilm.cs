namespace Tickover.Physics.Metering;

/// <summary>Fuel on the walls of the inlet: a part of what is metered settles there and comes off later.</summary>
/// <remarks>
/// C. F. Aquino, SAE 810494 (1981), form and figures from memory: warm engines settle 0.1 to 0.4 with 0.2 to 2 s, cold ones 0.5 to 0.8. One film
/// with one time stands for droplets, puddles and pressure at once; it is fitted, not predicted.
/// </remarks>
public sealed record WallFilm
{
    /// <summary>A film.</summary>
    /// <param name="settling">Part of the metered fuel that settles, 0 to 1.</param>
    /// <param name="seconds">Time in which the film comes off, s; above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public WallFilm(double settling, double seconds)
    {
        Settling = Precondition.Within(settling, 0, 1);
        Seconds = Precondition.Positive(seconds);
    }

    /// <summary>Part of the metered fuel that settles, 1.</summary>
    public double Settling { get; }

    /// <summary>Time in which the film comes off, s.</summary>
    public double Seconds { get; }

    /// <summary>Settling times time: the fuel owed for each unit by which the metered flow rises, s.</summary>
    public double OwedSeconds => Settling * Seconds;

    /// <summary>Fuel on the walls in steady running.</summary>
    /// <param name="metered">Metered fuel, kg/s.</param>
    /// <returns>kg.</returns>
    public double AtRest(double metered) => OwedSeconds * metered; // metering (23)

    /// <summary>Fuel on the walls after a time of constant metering; exact, however long.</summary>
    /// <param name="film">Fuel on the walls before, kg.</param>
    /// <param name="metered">Metered fuel, kg/s.</param>
    /// <param name="seconds">Time, s; not below zero.</param>
    /// <returns>kg.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is below zero or not a number.</exception>
    public double After(double film, double metered, double seconds) =>
        AtRest(metered) + (film - AtRest(metered)) * Math.Exp(-Precondition.NotNegative(seconds) / Seconds); // metering (24)

    /// <summary>Fuel that reaches the cylinders.</summary>
    /// <param name="film">Fuel on the walls, kg.</param>
    /// <param name="metered">Metered fuel, kg/s.</param>
    /// <returns>kg/s.</returns>
    public double Delivered(double film, double metered) => (1 - Settling) * metered + film / Seconds; // metering (25)

    /// <summary>Fuel that goes missing altogether when the metered flow rises and stays: what a pump must bring.</summary>
    /// <param name="rise">Rise of the metered flow, kg/s; below zero where it falls and the film gives back.</param>
    /// <returns>kg.</returns>
    public double Owed(double rise) => OwedSeconds * rise; // metering (26)
}
