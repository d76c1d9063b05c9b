namespace Tickover.Workshop.Calibration;

/// <summary>The unknowns of a calibration with their priors, and in which order they stand.</summary>
public static class CalibrationUnknowns
{
    /// <summary>What every calibration asks for, in order.</summary>
    public static IReadOnlyList<CalibrationUnknown> OfTheCar { get; } =
    [
        new("signal", "Depression in the auxiliary venturi", 0.20, true, "", "real gain 1.5 to 3 round 2.4, from memory"),
        new("mainDischarge", "Main jet's discharge", 0.08, true, "", "0.6 to 0.75 in textbook examples, 0.75 to 0.81 by the formula"),
        new("idleDischarge", "Idle jet's discharge", 0.12, true, "", "small jets spread more, common practice"),
        new("corrector", "Air through corrector and tube", 0.20, true, "", "hole edges are never known, assumed"),
        new("slip", "Slip of air in the nozzle", 0.30, true, "", "the homogeneous model is in poor agreement with measurement (Arias and Shedd 2005, abstract)"),
        new("nozzle", "Nozzle passage's discharge", 0.12, true, "", "assumed"),
        new("level", "Fuel level below the figure", 1.0, false, "mm", "half a millimetre of setting, more with pressure, common practice"),
        new("efficiency", "Volumetric efficiency", 0.06, true, "", "0.70 to 0.90 in examples, against the model's own"),
        new("plateZero", "Throttle reading's zero", 0.6, false, "°", "shut is not zero on most sensors, common practice"),
        new("idleAir", "Air through the idle bleed", 0.15, true, "", "assumed"),
    ];

    /// <summary>With what the sensor, leaks and levels of each bank but the last add to λ; the last one's is what makes the sum nothing.</summary>
    /// <remarks>What all banks have in common is the car's own, or the sensors': no reading tells those apart, so the latter is in the bands of every map.</remarks>
    /// <param name="banks">Number of banks, 1 or more.</param>
    /// <returns>The unknowns in order.</returns>
    public static IReadOnlyList<CalibrationUnknown> WithBanks(int banks) =>
    [
        .. OfTheCar,
        .. Enumerable.Range(1, Math.Max(0, banks - 1)).Select(b => new CalibrationUnknown(
            string.Create(System.Globalization.CultureInfo.InvariantCulture, $"bank{b}"),
            string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Bank {b} against the rest"),
            0.02,
            true,
            "",
            "sensor ±0.01 to 0.02 in λ, common practice")),
    ];
}
