namespace Tickover.Physics.Leaks;

/// <summary>Constants of leak tests, each with its source.</summary>
public static class LeakConstants
{
    /// <summary>Molar gas constant, J/(mol K), exact by the SI of 2019 to the digits shown.</summary>
    public const double MolarGasConstant = 8.314_462_618;

    /// <summary>Molar mass of dry air, kg/mol (ISO 2533:1975).</summary>
    public const double AirKilogramsPerMole = 0.028_964_42;

    /// <summary>Discharge coefficient taken for a small hole with sharp edges, 1.</summary>
    public const double HoleDischarge = 0.62;
}
