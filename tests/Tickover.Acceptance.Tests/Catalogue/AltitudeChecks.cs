using Tickover.Physics.Air;
using Tickover.Physics.Flow;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>What altitude and a dirty filter do to the ratio.</summary>
public static class AltitudeChecks
{
    private const double ReworkedDigits = 1e-4;

    public static CheckGroup Group { get; } = new("Altitude and air filter", [.. Altitude(), .. Standard(), .. Filter()]);

    private static OutsideCheck Printed(string subject, string quantity, double published, string source, Func<double> ours) => new()
    {
        Subject = subject,
        Quantity = quantity,
        Unit = "1",
        Published = published,
        Ours = ours,
        Source = source,
        Kind = SourceKind.Published,
    };

    private static OutsideCheck Reworked(string subject, string quantity, double published, string source, Func<double> ours) =>
        Printed(subject, quantity, published, source, ours) with { Kind = SourceKind.Derived, Tolerance = ReworkedDigits };

    private static IEnumerable<OutsideCheck> Altitude()
    {
        // The books' own atmosphere: h = 19 200 log10(p0/p), 6.5 K lost a kilometre, 0 °C taken as 273 K.
        const double decadeMetres = 19_200;
        double Ratio(double afr, double altitude, double kelvin)
        {
            var ground = new GasState(1.013e5, kelvin);
            var above = new GasState(1.013e5 * Math.Pow(10, -altitude / decadeMetres), kelvin - 0.0065 * altitude);
            return ElementaryCarburettor.AtOtherDensity(afr, Textbook.Air.Density(ground), Textbook.Air.Density(above));
        }

        const string gupta = "set to 14.7 at 22 °C on the ground, at 4000 m";
        const string mathur = "set to 14 at 27 °C on the ground, at 5000 m";
        const string quantity = "air to fuel by mass";
        yield return Printed(gupta, quantity, 12.11, Sources.Gupta("9.7"), () => Ratio(14.7, 4000, 295));
        yield return Reworked(gupta, quantity, 12.111, Sources.Reworked(Sources.Gupta("9.7")), () => Ratio(14.7, 4000, 295));
        yield return Printed(mathur, quantity, 10.99, Sources.Mathur("11.7"), () => Ratio(14, 5000, 300));
        yield return Reworked(mathur, quantity, 10.986, Sources.Reworked(Sources.Mathur("11.7")), () => Ratio(14, 5000, 300));
    }

    private static IEnumerable<OutsideCheck> Standard()
    {
        (double Altitude, double Ratio)[] rows = [(1000, 14.003), (2000, 13.325), (3000, 12.664)];
        return rows.Select(row => Reworked(
            FormattableString.Invariant($"set to 14.70 at sea level, at {row.Altitude} m of the standard atmosphere"),
            "air to fuel by mass",
            row.Ratio,
            Sources.StandardAtmosphere + " and the square root of density, evaluated independently",
            () => ElementaryCarburettor.AtOtherDensity(
                14.70,
                StandardAtmosphere.At(0).DensityKilogramsPerCubicMetre,
                StandardAtmosphere.At(row.Altitude).DensityKilogramsPerCubicMetre)));
    }

    private static IEnumerable<OutsideCheck> Filter()
    {
        const string quantity = "air to fuel by mass, chamber vented outside";
        const double technicalAtmosphere = 98_066.5;
        double With(double afr, double drop, double filter) => ElementaryCarburettor.WithOutsideVent(afr, drop, filter);

        return
        [
            Reworked("15 to 1 at 0.2 bar, filter 0.04 bar", quantity, 13.693, Sources.Reworked(Sources.Ganesan("8.6")), () => With(15, 0.2e5, 0.04e5)),
            Reworked("14.5 to 1 at 0.188 bar, filter 37.5 mm of mercury", quantity, 12.887, Sources.Reworked(Sources.Gupta("9.8")), () => With(14.5, 0.188e5, 37.5 * Textbook.PascalsPerMillimetreOfMercury)),
            Printed("15 to 1 at 0.2 bar, filter 30 mm of mercury", quantity, 13.69, Sources.Rajput("11.5"), () => With(15, 0.2e5, 30 * Textbook.PascalsPerMillimetreOfMercury)),
            Reworked("fuel to air 0.066 at 0.2 kgf/cm², filter 0.04 kgf/cm²", "fuel to air by mass, chamber vented outside", 0.0723, Sources.Reworked(Sources.Keswani("9.12")),
                () => 1 / With(1 / 0.066, 0.2 * technicalAtmosphere, 0.04 * technicalAtmosphere)) with { Tolerance = 1e-3 },
        ];
    }
}
