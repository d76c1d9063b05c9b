using Tickover.Physics.Flow;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Choke and jet from a prescribed throat speed.</summary>
public static class ChokeChecks
{
    public static CheckGroup Group { get; } = new("Choke and jet from the throat's speed",
    [
        .. Example(new Case(5, 0.5, 1.0e5, 100, 750, 0.8), Sources.Reworked(Sources.Ganesan("8.1")), SourceKind.Derived, 0.91221, 31.233, 2.3342),
        .. Example(new Case(5, 0.4, 1.013e5, 90, 780, 0.75), Sources.Gupta("9.1"), SourceKind.Published, null, 32.51, 2.2),
        .. Example(new Case(5, 0.4, 1.013e5, 90, 780, 0.75), Sources.Reworked(Sources.Gupta("9.1")), SourceKind.Derived, 0.94052, 32.505, 2.2041),
        .. Example(new Case(5, null, 1.013e5, 90, 0, 0), Sources.Mathur("11.1"), SourceKind.Published, null, 32.5, null),
        .. Example(new Case(6, 0.45, 1.013e5, 92, 740, 0.75), Sources.Rajput("11.7") + "; Mathur and Sharma, 8th ed. 2010, ex. 11.2", SourceKind.Published, null, 35.26, 2.34),
        .. Example(new Case(6, 0.45, 1.013e5, 92, 740, 0.75), Sources.Reworked(Sources.Rajput("11.7")), SourceKind.Derived, 0.93735, 35.261, 2.3436),
        .. Vapour(),
    ]);

    private static IEnumerable<OutsideCheck> Example(Case example, string source, SourceKind kind, double? bar, double? choke, double? jet)
    {
        var tolerance = kind == SourceKind.Derived ? 1e-3 : OutsideCheck.TextbookTolerance; // cp 1005 there, γ R/(γ-1) = 1004.5 here
        OutsideCheck Row(string quantity, string unit, double published, Func<double> ours) => new()
        {
            Subject = FormattableString.Invariant($"choke for {example.AirPerMinute} kg/min of air at {example.Speed} m/s"),
            Quantity = quantity,
            Unit = unit,
            Published = published,
            Ours = ours,
            Source = source,
            Kind = kind,
            Tolerance = tolerance,
        };

        if (bar is { } pressure)
        {
            yield return Row("throat pressure", "bar", pressure, () => example.ThroatPressure / 1e5);
        }

        if (choke is { } chokeMillimetres)
        {
            yield return Row("choke diameter", "mm", chokeMillimetres, () => example.ChokeDiameter * 1e3);
        }

        if (jet is { } jetMillimetres)
        {
            yield return Row("jet diameter", "mm", jetMillimetres, () => example.JetDiameter * 1e3);
        }
    }

    // The example counts the fuel's vapour in the engine's volume, so only flow and throat are ours; the ratio is its own.
    private static IEnumerable<OutsideCheck> Vapour()
    {
        const double ratio = 14.539;
        const double vapourGasConstant = 98;
        var upstream = new GasState(1e5, 298);
        const double throat = 0.94e5;
        double Fuel() => ChokeAndJetSizing.AirVolumeFlow(4 * Circle.Area(0.080) * 0.090, 4000, 0.8)
            * upstream.PressurePascals / (upstream.TemperatureKelvin * (ratio * Textbook.Air.GasConstant + vapourGasConstant));
        double Speed() => Venturi.ThroatSpeed(upstream, throat, 1, Textbook.Air);
        double Diameter() => Circle.Diameter(Venturi.ThroatArea(ratio * Fuel(), Venturi.ThroatDensity(upstream, throat, Textbook.Air), Speed()));

        OutsideCheck Row(string quantity, string unit, double published, Func<double> ours, SourceKind kind) => new()
        {
            Subject = "four cylinders 80 × 90 mm at 4000 rev/min, 0.06 bar at the throat",
            Quantity = quantity,
            Unit = unit,
            Published = published,
            Ours = ours,
            Source = kind == SourceKind.Derived ? Sources.Reworked(Sources.Gupta("9.3")) : Sources.Gupta("9.3"),
            Kind = kind,
        };

        yield return Row("fuel flow", "kg/s", 0.00379, Fuel, SourceKind.Published);
        yield return Row("throat speed", "m/s", 102.5, Speed, SourceKind.Published);
        yield return Row("choke diameter", "mm", 24.75, () => Diameter() * 1e3, SourceKind.Published);
        yield return Row("choke diameter", "mm", 24.747, () => Diameter() * 1e3, SourceKind.Derived);
    }

    private sealed record Case(double AirPerMinute, double? FuelPerMinute, double Pressure, double Speed, double FuelDensity, double DropShare)
    {
        private const double VelocityCoefficient = 0.8;
        private const double JetCoefficient = 0.6;
        private const double SecondsPerMinute = 60;

        public double ThroatPressure => Venturi.ThroatPressure(Upstream, Speed, VelocityCoefficient, Textbook.Air);

        public double ChokeDiameter => Circle.Diameter(
            Venturi.ThroatArea(AirPerMinute / SecondsPerMinute, Venturi.ThroatDensity(Upstream, ThroatPressure, Textbook.Air), Speed));

        public double JetDiameter => Circle.Diameter(IncompressibleOrifice.EffectiveArea(
            (FuelPerMinute ?? double.NaN) / SecondsPerMinute, DropShare * (Pressure - ThroatPressure), FuelDensity) / JetCoefficient);

        private GasState Upstream => new(Pressure, 300);
    }
}
