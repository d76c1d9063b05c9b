using Tickover.Physics.Leaks;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Pressure decay, units of leaks, flat panels.</summary>
public static class LeakChecks
{
    private const string Rule = "40 CFR 1065.644, vacuum-decay leak rate: its inputs, answer as printed there";
    private const string Roark = "W. C. Young and R. G. Budynas, Roark's Formulas for Stress and Strain, 7th ed., table 11.4";
    private const string Plates = "S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., tables 8 and 35";
    private const string Ours = "Worked out independently";
    private const double Air = 101_325;

    private static readonly DecayInstruments Any = new() { GaugePascals = 1, ThermometerKelvins = 0.1 };

    public static CheckGroup Group { get; } = new("Leak test", [.. Decay(), .. Units(), .. Panels()]);

    private static OutsideCheck Of(string subject, string quantity, string source, SourceKind kind, (double Value, string Unit) published, Func<double> ours, double tolerance = OutsideCheck.TextbookTolerance) => new()
    {
        Subject = subject,
        Quantity = quantity,
        Source = source,
        Kind = kind,
        Published = published.Value,
        Unit = published.Unit,
        Ours = ours,
        Tolerance = tolerance,
    };

    private static IEnumerable<OutsideCheck> Decay()
    {
        // Vacuum: gas comes in, so the leak out is below zero.
        static LeakRate Vacuum() => new DecayTest
        {
            VolumeCubicMetres = 2.0e-3,
            Instruments = Any,
            Readings = [new(0, 25_300 - Air, 293.15, Air), new(70, 50_600 - Air, 293.15, Air)],
        }.Leak();

        static LeakRate Workshop() => new DecayTest
        {
            VolumeCubicMetres = 0.050,
            Instruments = Any,
            Readings = [new(0, 10_000, 293.15, Air), new(600, 9_800, 293.15, Air)],
        }.Leak();

        return
        [
            Of("2 litres rising from 25.3 to 50.6 kPa in 70 s at 293.15 K", "leak", Rule, SourceKind.FromMemory, (3.0e-4, "mol/s"), () => -Vacuum().MolesPerSecond, 0.02),
            Of("2 litres rising from 25.3 to 50.6 kPa in 70 s at 293.15 K", "leak", Ours, SourceKind.Derived, (2.9657e-4, "mol/s"), () => -Vacuum().MolesPerSecond, 1e-4),
            Of("50 litres falling by 200 Pa in 600 s", "leak", "Q = V Δp/t of the leak-test handbooks", SourceKind.Published, (0.016667, "Pa m³/s"), () => Workshop().PascalCubicMetresPerSecond, 1e-4),
            Of("50 litres falling by 200 Pa in 600 s", "round hole that leaks as much", Ours, SourceKind.Derived, (50, "µm"), () => 1e6 * EquivalentHole.Diameter(0.016667, 10_000, Air, 293.15), 0.02),
            Of("air at 111.3 kPa cooling by 1 K from 293 K", "fall of pressure", Ours, SourceKind.Derived, (380, "Pa"), () => 111_325 / 293.15, 0.002),
        ];
    }

    private static IEnumerable<OutsideCheck> Units() =>
    [
        Of("0.016667 Pa m³/s", "in mbar l/s", "Definition: 1 mbar l/s is 0.1 Pa m³/s", SourceKind.Published, (0.16667, "mbar l/s"), () => 0.016667 / LeakUnits.MillibarLitrePerSecond, 1e-5),
        Of("0.016667 Pa m³/s", "in standard cm³ a minute", "1 Pa m³/s is 592 standard cm³ a minute at 0 °C, leak-test handbooks", SourceKind.FromMemory, (9.869, "cm³/min"), () => 0.016667 / LeakUnits.StandardCubicCentimetrePerMinute, 0.001),
    ];

    private static IEnumerable<OutsideCheck> Panels()
    {
        static FlatPanel Unit(double aspect) => new() { ShortMetres = 1, LongMetres = aspect, ThicknessMetres = 1, StiffnessPascals = 1 };

        static FlatPanel Sheet(double thickness) => new() { ShortMetres = 0.30, LongMetres = 0.30, ThicknessMetres = thickness, StiffnessPascals = 70e9 };

        const double poisson = 0.3;
        return
        [
            .. new[] { (1.0, 0.00126), (1.2, 0.00172), (1.6, 0.00230), (2.0, 0.00254) }.Select(row => Of(
                FormattableString.Invariant($"clamped panel {row.Item1} to 1"), "deflection, of p a⁴/D", Plates, SourceKind.FromMemory, (row.Item2, "1"),
                () => Unit(row.Item1).Deflection(1, PanelEdge.Clamped) / (12 * (1 - poisson * poisson)), 0.01)),
            .. new[] { (1.0, 0.0513), (1.2, 0.0639), (1.6, 0.0780), (2.0, 0.0829) }.Select(row => Of(
                FormattableString.Invariant($"clamped panel {row.Item1} to 1"), "bending moment at the long edge, of p a²", Plates, SourceKind.FromMemory, (row.Item2, "1"),
                () => Unit(row.Item1).Stress(1, PanelEdge.Clamped) / 6, 0.005)),
            .. new[] { (1.0, 0.00406), (1.6, 0.00830), (2.0, 0.01013), (3.0, 0.01223), (4.0, 0.01282) }.Select(row => Of(
                FormattableString.Invariant($"supported panel {row.Item1} to 1"), "deflection, of p a⁴/D", Plates, SourceKind.FromMemory, (row.Item2, "1"),
                () => Unit(row.Item1).Deflection(1, PanelEdge.Supported) / (12 * (1 - poisson * poisson)), 0.015)),
            .. new[] { (1.0, 0.2874), (2.0, 0.6102), (3.0, 0.7134), (5.0, 0.7476) }.Select(row => Of(
                FormattableString.Invariant($"supported panel {row.Item1} to 1"), "greatest stress, of p a²/h²", Roark, SourceKind.FromMemory, (row.Item2, "1"),
                () => Unit(row.Item1).Stress(1, PanelEdge.Supported), 0.015)),
            Of("clamped 0.30 m square, 2 mm of aluminium", "pressure that bulges half the thickness", Ours, SourceKind.Derived, (5010, "Pa"), () => Sheet(2e-3).BreathingPressure(PanelEdge.Clamped), 0.002),
            Of("clamped 0.30 m square, 1.2 mm of soft aluminium", "pressure at 35 MPa", Ours, SourceKind.Derived, (1820, "Pa"), () => 35e6 / Sheet(1.2e-3).Stress(1, PanelEdge.Clamped), 0.002),
        ];
    }
}
