namespace Tickover.Physics.Walls;

/// <summary>Constants of corrosion, each with its source.</summary>
public static class WallsConstants
{
    /// <summary>Faraday's constant, C/mol, exact by the SI of 2019 to the digits shown (CODATA 2018).</summary>
    public const double FaradayCoulombsPerMole = 96_485.33212;

    /// <summary>A year of 365.25 days, s.</summary>
    public const double SecondsPerYear = 31_557_600;

    /// <summary>Euler's constant γ, 1.</summary>
    public const double EulerGamma = 0.577_215_664_901_532_9;

    /// <summary>Electrons taken up by one molecule of oxygen, 1.</summary>
    public const double OxygenElectrons = 4;

    /// <summary>Diffusivity of oxygen in water near 20 °C, m²/s (handbook value, from memory).</summary>
    public const double OxygenDiffusivitySquareMetresPerSecond = 2.0e-9;

    /// <summary>Oxygen dissolved in water in contact with air near 20 °C, mol/m³: some 8 g/m³ (handbook value, from memory).</summary>
    public const double DissolvedOxygenMolesPerCubicMetre = 0.25;
}
