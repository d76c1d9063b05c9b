namespace Tickover.Workshop.Leaks;

/// <summary>What the largest flat panel bears.</summary>
/// <param name="GentlePascals">The most pressure to use, Pa.</param>
/// <param name="BreathingPascals">Pressure at which it bulges by half its thickness, Pa, edges clamped.</param>
/// <param name="TypeTestTimes">How many times its bearable stress a type test at 0.3 bar would ask.</param>
/// <param name="UsedPascals">The most pressure the test used, Pa.</param>
/// <param name="IsMeasured">Whether the panel was described; otherwise the limit is the usual for low air.</param>
public sealed record PanelFinding(double GentlePascals, double? BreathingPascals, double? TypeTestTimes, double UsedPascals, bool IsMeasured)
{
    /// <summary>Pressure of type tests, Pa (UNECE rules for tanks, 0.3 bar at least, filled with water).</summary>
    public const double TypeTestPascals = 30_000;

    /// <summary>Usual for a low-pressure air test, Pa (ISO 21487:2022 checks with 1.9 to 2.1 kPa of air).</summary>
    public const double UsualPascals = 2_000;

    /// <summary>The most air to use whatever a panel bears, Pa: seams are older than sheet. The lower end of the trade's 1 to 2 psi for thin old steel (common practice).</summary>
    public const double MostPascals = 7_000;

    /// <summary>Whether the test used more than the panel should bear.</summary>
    public bool IsOver => UsedPascals > GentlePascals;
}
