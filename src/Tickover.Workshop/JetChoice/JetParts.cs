namespace Tickover.Workshop.JetChoice;

/// <summary>The parts a choice may change, in the order they stand on a list. Sizes and steps: trade reference 3.5, common practice.</summary>
public static class JetParts
{
    private const double Hundredth = 1e-5;
    private const double Millimetre = 1e-3;

    /// <summary>Choke (main venturi).</summary>
    public static JetPart Choke { get; } = new("choke", "Choke", " mm", Millimetre, (20, 50, 1), 2, 3, false, 1);

    /// <summary>Fuel level below the nozzle's lip: set, not bought.</summary>
    public static JetPart FloatLevel { get; } = new("floatLevel", "Fuel level", " mm", Millimetre, (0, 15, 0.5), 2, 4, true, 2, IsLength: true);

    /// <summary>Idle jet.</summary>
    public static JetPart IdleJet { get; } = new("idleJet", "Idle jet", "", Hundredth, (35, 80, 5), 3, 1, false, 3);

    /// <summary>Idle air bleed.</summary>
    public static JetPart IdleBleed { get; } = new("idleBleed", "Idle air bleed", "", Hundredth, (80, 200, 10), 2, 1, false, 4);

    /// <summary>Mixture screw, turns out: set, not bought.</summary>
    public static JetPart Screw { get; } = new("screwTurns", "Mixture screw", "", 1, (0.5, 5, 0.5), 3, 0.3, true, 5);

    /// <summary>Main jet.</summary>
    public static JetPart MainJet { get; } = new("mainJet", "Main jet", "", Hundredth, (80, 200, 5), 5, 1, false, 6);

    /// <summary>Air corrector.</summary>
    public static JetPart AirCorrector { get; } = new("airCorrector", "Air corrector", "", Hundredth, (100, 250, 10), 5, 1, false, 7);

    /// <summary>All, in that order.</summary>
    public static IReadOnlyList<JetPart> All { get; } = [Choke, FloatLevel, IdleJet, IdleBleed, Screw, MainJet, AirCorrector];

    /// <summary>A part by its name in documents.</summary>
    /// <param name="name">Name.</param>
    /// <returns>The part, or null.</returns>
    public static JetPart? Find(string name) => All.FirstOrDefault(p => string.Equals(p.Name, name, StringComparison.Ordinal));
}
