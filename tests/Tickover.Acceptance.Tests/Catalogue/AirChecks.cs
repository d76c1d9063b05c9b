using Tickover.Physics.Air;
using Tickover.Physics.Flow;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Standard atmosphere, moist air, viscosity.</summary>
public static class AirChecks
{
    private const double TabulatedDigits = 1e-5;
    private const string OpenAtmosphere = "U.S. Standard Atmosphere 1976, table by geometric altitude, as quoted in the tests of the open library fluids";
    private const string MassMetrology = "Mass-metrology appendix p. 205, as quoted in the tests of the open package masscor";
    private const string SopTwo = "NIST IR 6969, SOP 2, as quoted in the tests of the open package masscor";
    private const string Sutherland = "U.S. Standard Atmosphere 1976, eq. (51), evaluated independently";
    private const string CipmReworked = "Picard et al., Metrologia 45 (2008) 149, evaluated independently";

    public static CheckGroup Group { get; } = new("Air",
        [.. Geopotential(), .. Geometric(), .. Moist(), .. Vapour(), .. Viscosity()]);

    private static IEnumerable<OutsideCheck> Geopotential()
    {
        (double Altitude, double T, double P, double Rho)[] rows =
        [
            (0, 288.15, 101325.0, 1.22500), (500, 284.90, 95460.8, 1.16727), (1000, 281.65, 89874.6, 1.11164),
            (1500, 278.40, 84556.0, 1.05807), (2000, 275.15, 79495.2, 1.00649), (2500, 271.90, 74682.5, 0.95686),
            (3000, 268.65, 70108.5, 0.90912), (4000, 262.15, 61640.2, 0.81913), (5000, 255.65, 54019.9, 0.73612),
        ];
        return rows.SelectMany(row => new[]
        {
            Derived($"standard atmosphere at {row.Altitude} m", "temperature", "K", row.T, () => StandardAtmosphere.TemperatureKelvin(row.Altitude)),
            Derived($"standard atmosphere at {row.Altitude} m", "pressure", "Pa", row.P, () => StandardAtmosphere.PressurePascals(row.Altitude)),
            Derived($"standard atmosphere at {row.Altitude} m", "density", "kg/m³", row.Rho, () => StandardAtmosphere.At(row.Altitude).DensityKilogramsPerCubicMetre),
        });

        static OutsideCheck Derived(string subject, string quantity, string unit, double published, Func<double> ours) => new()
        {
            Subject = subject,
            Quantity = quantity,
            Unit = unit,
            Published = published,
            Ours = ours,
            Kind = SourceKind.Derived,
            Source = Sources.StandardAtmosphere + ", evaluated independently",
            Tolerance = TabulatedDigits,
        };
    }

    private static IEnumerable<OutsideCheck> Geometric()
    {
        const double fiveDigits = 1e-4;
        (double Height, double T, double P, double Rho, double Sound, double Viscosity)[] rows =
        [
            (2000, 275.15, 79501, 1.0066, 332.53, 17.26), (4000, 262.17, 61660, 0.81935, 324.59, 16.612),
        ];
        return rows.SelectMany(row => new[]
        {
            Seen(row.Height, "temperature", "K", row.T, air => air.TemperatureKelvin),
            Seen(row.Height, "pressure", "Pa", row.P, air => air.PressurePascals),
            Seen(row.Height, "density", "kg/m³", row.Rho, air => air.DensityKilogramsPerCubicMetre),
            Seen(row.Height, "speed of sound", "m/s", row.Sound, air => IdealGas.Air.SpeedOfSound(air.TemperatureKelvin)),
            Seen(row.Height, "viscosity", "µPa s", row.Viscosity, air => AirViscosity.PascalSeconds(air.TemperatureKelvin) * 1e6) with { Tolerance = 2e-4 },
        });

        static OutsideCheck Seen(double height, string quantity, string unit, double published, Func<AmbientAir, double> ours) => new()
        {
            Subject = $"standard atmosphere {height} m above the sea",
            Quantity = quantity,
            Unit = unit,
            Published = published,
            Ours = () => ours(StandardAtmosphere.At(StandardAtmosphere.GeopotentialFromGeometric(height))),
            Kind = SourceKind.Published,
            Source = OpenAtmosphere,
            Tolerance = fiveDigits,
        };
    }

    private static IEnumerable<OutsideCheck> Moist()
    {
        const double formulaVersions = 2e-4; // the source used an older form of the equation
        const double otherEquation = 5e-4; // the source used the simpler equation of Jones 1978
        yield return Density(730 * Textbook.PascalsPerMillimetreOfMercury, 10, 0.40, 1.19569, MassMetrology, SourceKind.Published, formulaVersions);
        yield return Density(760 * Textbook.PascalsPerMillimetreOfMercury, 40, 0.40, 1.11497, MassMetrology, SourceKind.Published, formulaVersions) with
        {
            Note = "an older form of the equation",
        };
        yield return Density(748.1 * Textbook.PascalsPerMillimetreOfMercury, 22.3, 0.37, 1.17194, SopTwo, SourceKind.Published, otherEquation) with
        {
            Note = "there by the simpler equation of Jones, 1978",
        };
        yield return Density(612.3 * Textbook.PascalsPerMillimetreOfMercury, 23.4, 0.23, 0.95632, SopTwo, SourceKind.Published, otherEquation) with
        {
            Note = "there by the simpler equation of Jones, 1978",
        };
        yield return Density(101_325, 20, 0.5, 1.199314, CipmReworked, SourceKind.Derived, 1e-6);
        yield return Density(101_325, 15, 0, 1.225521, CipmReworked, SourceKind.Derived, 1e-6);
        yield return Density(98_000, 30, 0.8, 1.111781, CipmReworked, SourceKind.Derived, 1e-6);
    }

    private static OutsideCheck Density(double pascals, double celsius, double humidity, double published, string source, SourceKind kind, double tolerance) => new()
    {
        Subject = FormattableString.Invariant($"moist air at {celsius} °C, {pascals / 100:0.0} hPa, {humidity * 100:0} %"),
        Quantity = "density",
        Unit = "kg/m³",
        Published = published,
        Ours = () => MoistAir.At(pascals, celsius + AirConstants.IcePointKelvin, humidity).DensityKilogramsPerCubicMetre,
        Kind = kind,
        Source = source,
        Tolerance = tolerance,
    };

    private static IEnumerable<OutsideCheck> Vapour()
    {
        const double t = 293.15;
        const double p = 101_325;
        (string Quantity, string Unit, double Published, Func<double> Ours)[] rows =
        [
            ("saturation pressure", "Pa", 2339.163, () => MoistAir.SaturationPressurePascals(t)),
            ("enhancement factor", "1", 1.00402561, () => MoistAir.EnhancementFactor(p, t)),
            ("mole fraction of vapour at 50 %", "1", 0.01158934, () => MoistAir.VapourMoleFraction(p, t, 0.5)),
            ("compressibility at 50 %", "1", 0.99961477, () => MoistAir.Compressibility(p, t, MoistAir.VapourMoleFraction(p, t, 0.5))),
        ];
        return rows.Select(row => new OutsideCheck
        {
            Subject = "moist air at 20 °C, 1013.25 hPa",
            Quantity = row.Quantity,
            Unit = row.Unit,
            Published = row.Published,
            Ours = row.Ours,
            Kind = SourceKind.Derived,
            Source = CipmReworked,
            Tolerance = 1e-6,
        });
    }

    private static IEnumerable<OutsideCheck> Viscosity()
    {
        (double T, double MicroPascalSeconds)[] rows =
            [(253.15, 16.153), (273.15, 17.161), (288.15, 17.894), (293.15, 18.134), (300, 18.460), (313.15, 19.076), (373.15, 21.734)];
        return rows.Select(row => new OutsideCheck
        {
            Subject = FormattableString.Invariant($"air at {row.T} K"),
            Quantity = "viscosity",
            Unit = "µPa s",
            Published = row.MicroPascalSeconds,
            Ours = () => AirViscosity.PascalSeconds(row.T) * 1e6,
            Kind = SourceKind.Derived,
            Source = Sutherland,
            Tolerance = 5e-5,
        });
    }
}
