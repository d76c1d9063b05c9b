using Tickover.Physics.Flow;
using Tickover.Physics.Inspection;
using Tickover.Physics.Supply;
using Tickover.Workshop.StripDown.Levels;
using Tickover.Workshop.StripDown.Wear;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Floats set dry, narrow gaps, and the limits of the strip-down.</summary>
public static class InspectionChecks
{
    private const string Balance = "Tanks and supply report, 4.3, force balance at shut-off: 1.75 mm seat, arms 3 : 1, float of 9 cm², 740 kg/m³, worked out independently";
    private const string Annulus = "H. E. Merritt, Hydraulic Control Systems, 1967, 3-2: leakage through an annulus, Q = π·d·c³·Δp·(1 + 1.5·ε²)/(12·μ·L); put in by hand";
    private const string Lip = "Carburation report, 1.2: a millimetre of level is 7.3 Pa of 745 kg/m³, half of its part of the net signal, worked out independently";
    private const string Choked = "Trade report, 2.2: choked air at 25 °C, 237 kg/s through a square metre, worked out independently; it says 1 bar, but the figure is that of 1 atm, at 1 bar it is 234";
    private const string Practice = "Trade report, 1.11 and 1.13";

    private static readonly GasState Room = new(101_325, 298.15);

    public static CheckGroup Group { get; } = new("Inspection: floats, leaks, limits",
    [
        .. new[] { (10, 1.227), (15, 1.841), (20, 2.454), (25, 3.068), (35, 4.295) }.Select(row => Deeper(row.Item1, row.Item2)),
        .. new[] { (300, 1.2), (1000, 0.37), (5000, 0.073) }.Select(row => Millimetre(row.Item1, row.Item2)),
        One("spindle of 8.00 mm in 8.04 mm, 12 mm long, air at 20 °C, 1 kPa", "leak", "mm³/s", 77.21, Annulus, SourceKind.FromMemory, 0.005, () => Leak(0)),
        One("the same spindle lying against its bush, over the middle one", "leak", "1", 2.5, Annulus, SourceKind.FromMemory, 0.005, () => Leak(1) / Leak(0)),
        One("a gap as good as without length, sonic", "flow through its area times coefficient", "kg/(s·m²)", 237, Choked, SourceKind.Derived, 0.005, Short),
        One("barrel of 4 kg/h at discharge factor 0.75, sonic", "area", "mm²", 6.3, Choked, SourceKind.Derived, 0.01, () => 4.0 / 3600 / IdleLeak.Through(0.75, Room, [40_000]) * 1e6),
        Limit("radial clearance of a spindle, good", "mm", 0.05, () => new WearLimits().SpindleGood),
        Limit("radial clearance of a spindle, usable", "mm", 0.10, () => new WearLimits().SpindleUsable),
        Limit("radial clearance of a spindle, bushed anew", "mm", 0.15, () => new WearLimits().SpindleRebush),
        Limit("gap under a flange", "mm", 0.05, () => new WearLimits().Flange),
        Limit("needle holds", "s", 15, () => new WearLimits().Hold),
        Limit("pump shots between barrels", "%", 10, () => new WearLimits().Pump),
        Limit("floats equal within", "g", 0.5, () => LevelUsual.MassLimit),
        Limit("wet levels equal within", "mm", 0.5, () => LevelUsual.Limit),
    ]);

    private static OutsideCheck Deeper(double kilopascals, double millimetres)
    {
        var setting = new FloatSetting
        {
            Shape = new StraightFloat(9e-4, 30e-3),
            MassKilograms = 8e-3,
            Valve = new FloatValve { Name = "needle", SeatMetres = 1.75e-3, LeverRatio = 3, FloatAreaSquareMetres = 9e-4 },
            BottomMetres = 40e-3,
            SpillMetres = 0,
        };
        return One(FormattableString.Invariant($"float set dry, {kilopascals} kPa under the needle"), "fuel stands higher by", "mm", millimetres, Balance, SourceKind.Derived, 1e-3,
            () => 1e3 * (setting.Level(0, 0, 740)!.Value - setting.Level(kilopascals * 1e3, 0, 740)!.Value));
    }

    private static OutsideCheck Millimetre(double signal, double percent) => One(
        FormattableString.Invariant($"a millimetre more fuel at a net signal of {signal} Pa"), "more fuel", "%", percent, Lip, SourceKind.Derived, 0.02, () => 100 * FloatSetting.FuelChange(1e-3, 0, signal, 745));

    // 1 kPa about a mean of 1 bar, as volume at that mean: there the gas is as good as a liquid
    private static double Leak(double eccentricity)
    {
        var flow = NarrowGap.Round(8e-3, 8.04e-3, 12e-3, eccentricity).Flow(new GasState(100_500, 293.15), 99_500).KilogramsPerSecond;
        return 1e9 * flow / IdealGas.Air.Density(new GasState(100_000, 293.15));
    }

    private static double Short()
    {
        var gap = NarrowGap.Round(8e-3, 9e-3, 1e-6);
        return gap.Flow(Room, 30_000).KilogramsPerSecond / (gap.EntryCoefficient * gap.AreaSquareMetres);
    }

    private static OutsideCheck Limit(string subject, string unit, double published, Func<double> ours) => One(subject, "limit", unit, published, Practice, SourceKind.CommonPractice, 1e-9, ours);

    private static OutsideCheck One(string subject, string quantity, string unit, double published, string source, SourceKind kind, double tolerance, Func<double> ours) => new()
    {
        Subject = subject,
        Quantity = quantity,
        Unit = unit,
        Published = published,
        Source = source,
        Kind = kind,
        Tolerance = tolerance,
        Ours = ours,
    };
}
