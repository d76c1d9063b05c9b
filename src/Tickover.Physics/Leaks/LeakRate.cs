namespace Tickover.Physics.Leaks;

/// <summary>What a leak test says.</summary>
public sealed record LeakRate
{
    /// <summary>Deviations to either side that hold 90 %, and that one test in twenty without a leak oversteps.</summary>
    public const double Ninety = 1.644_853_627;

    /// <summary>A leak of so many deviations is missed once in twenty and cried wrongly once in twenty.</summary>
    public const double SeenDeviations = 2 * Ninety;

    /// <summary>The leak at the tank's mean temperature, Pa m³/s; below zero where gas was gained.</summary>
    public required double PascalCubicMetresPerSecond { get; init; }

    /// <summary>Standard deviation if there were no leak, Pa m³/s.</summary>
    public required double DeviationOfNone { get; init; }

    /// <summary>Standard deviation of the leak, Pa m³/s, with the volume's share.</summary>
    public required double Deviation { get; init; }

    /// <summary>What the gauge alone would have said, Pa m³/s.</summary>
    public required double WithoutTemperature { get; init; }

    /// <summary>The leak, mol/s.</summary>
    public required double MolesPerSecond { get; init; }

    /// <summary>Mean temperature of the gas, K.</summary>
    public required double GasKelvins { get; init; }

    /// <summary>Mean pressure from nothing, Pa.</summary>
    public required double AbsolutePascals { get; init; }

    /// <summary>Mean pressure above the air around, Pa.</summary>
    public required double GaugePascals { get; init; }

    /// <summary>Whether pressure stayed near enough for one rate.</summary>
    public required Validity Validity { get; init; }

    /// <summary>Lower end of the band that holds the leak nine times in ten, Pa m³/s.</summary>
    public double Low => PascalCubicMetresPerSecond - Ninety * Deviation;

    /// <summary>Upper end of the band, Pa m³/s.</summary>
    public double High => PascalCubicMetresPerSecond + Ninety * Deviation;

    /// <summary>Above this it is taken for a leak, Pa m³/s.</summary>
    public double Threshold => Ninety * DeviationOfNone; // leaks (7)

    /// <summary>The smallest leak this test could have been trusted to see, Pa m³/s.</summary>
    public double SmallestSeen => SeenDeviations * DeviationOfNone; // leaks (7)

    /// <summary>Whether a leak was seen.</summary>
    public bool IsSeen => PascalCubicMetresPerSecond > Threshold;

    /// <summary>Whether gas was gained beyond what the instruments explain: the tank is still warming, or a reading is wrong.</summary>
    public bool IsGain => PascalCubicMetresPerSecond < -Threshold;
}
