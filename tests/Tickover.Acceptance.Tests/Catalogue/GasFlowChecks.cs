using Tickover.Physics.Flow;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Isentropic and choked flow, expansibility.</summary>
public static class GasFlowChecks
{
    private const double Gamma = 1.4;
    private const double FiveDigits = 1e-5;
    private const string ElgerTable = "D. F. Elger et al., Engineering Fluid Mechanics, 10th ed. 2012 (title and edition from memory), Table A.1, k 1.4";
    private const string MatthewsTable = "C. Matthews, Aeronautical Engineer's Data Book, Table A4.2, γ 7/5";
    private const string AmesTables = "NACA Report 1135 (1953), table for γ 1.4; equal to Çengel and Boles, table A-32";
    private const string Pascal = "ISO 5167-2, value quoted in the tests of the open library fluids";

    public static CheckGroup Group { get; } = new("Gas flow",
        [.. Table(), .. FlowFunctions(), .. Critical(), .. Choked(), .. Nozzles(), .. Plate()]);

    private static OutsideCheck Check(string subject, string quantity, string unit, double published, Func<double> ours, string source, SourceKind kind, double tolerance = OutsideCheck.TextbookTolerance) => new()
    {
        Subject = subject,
        Quantity = quantity,
        Unit = unit,
        Published = published,
        Ours = ours,
        Source = source,
        Kind = kind,
        Tolerance = tolerance,
    };

    private static IEnumerable<OutsideCheck> Table()
    {
        const double fourDigits = 1.1e-4; // half a unit of the fourth figure
        (double Mach, double P, double Rho, double T, double A, string Source)[] rows =
        [
            (0.1, 0.9930, 0.9950, 0.9980, 5.8218, ElgerTable), (0.2, 0.9725, 0.9803, 0.9921, 2.9635, AmesTables),
            (0.3, 0.9395, 0.9564, 0.9823, 2.0351, AmesTables), (0.4, 0.8956, 0.9243, 0.9690, 1.5901, AmesTables),
            (0.5, 0.8430, 0.8852, 0.9524, 1.3398, ElgerTable), (0.6, 0.7840, 0.8405, 0.9328, 1.1882, ElgerTable),
            (0.8, 0.6560, 0.7400, 0.8865, 1.0382, AmesTables), (1, 0.5283, 0.6339, 0.8333, 1, MatthewsTable),
        ];
        return rows.SelectMany(row => new[]
        {
            Row(row.Mach, row.Source, "static over total pressure", row.P, IsentropicFlow.PressureRatio),
            Row(row.Mach, row.Source, "static over total density", row.Rho, IsentropicFlow.DensityRatio),
            Row(row.Mach, row.Source, "static over total temperature", row.T, IsentropicFlow.TemperatureRatio),
            Row(row.Mach, row.Source, "area over sonic area", row.A, IsentropicFlow.AreaRatio),
        });

        static OutsideCheck Row(double mach, string source, string quantity, double published, Func<double, double, double> ours) => Check(
            FormattableString.Invariant($"air at Mach {mach}"),
            quantity,
            "1",
            published,
            () => ours(mach, Gamma),
            source,
            string.Equals(source, AmesTables, StringComparison.Ordinal) ? SourceKind.FromMemory : SourceKind.Published,
            fourDigits);
    }

    private static IEnumerable<OutsideCheck> FlowFunctions()
    {
        (double Ratio, double Psi)[] psi =
        [
            (0.99, 0.140662), (0.98, 0.197846), (0.95, 0.307641), (0.90, 0.422581), (0.85, 0.501799), (0.80, 0.560661),
            (0.70, 0.638317), (0.60, 0.676915), (0.528282, 0.684731), (0.3, 0.684731),
        ];
        (double Ratio, double Phi)[] phi =
            [(0.99, 0.994628), (0.97, 0.983798), (0.95, 0.972847), (0.93, 0.961772), (0.90, 0.944920), (0.85, 0.916156), (0.80, 0.886483)];
        return
        [
            .. psi.Select(row => Check(FormattableString.Invariant($"air, pressure ratio {row.Ratio}"), "Ψ", "1", row.Psi, () => IsentropicFlow.Psi(row.Ratio, Gamma), Sources.Gas, SourceKind.Derived, FiveDigits)),
            .. phi.Select(row => Check(FormattableString.Invariant($"air, pressure ratio {row.Ratio}"), "Φ", "1", row.Phi, () => IsentropicFlow.Phi(row.Ratio, Gamma), Sources.Gas, SourceKind.Derived, FiveDigits)),
        ];
    }

    private static IEnumerable<OutsideCheck> Critical()
    {
        (double Gamma, double Ratio, double Psi)[] rows =
            [(1.4, 0.528282, 0.684731), (1.35, 0.536851, 0.676145), (1.3, 0.545728, 0.667262), (1.289, 0.547724, 0.665267)];
        return rows.SelectMany(row => new[]
        {
            Check(FormattableString.Invariant($"gas of γ {row.Gamma}"), "critical pressure ratio", "1", row.Ratio, () => IsentropicFlow.CriticalPressureRatio(row.Gamma), Sources.Gas, SourceKind.Derived, FiveDigits),
            Check(FormattableString.Invariant($"gas of γ {row.Gamma}"), "choked Ψ", "1", row.Psi, () => IsentropicFlow.ChokedPsi(row.Gamma), Sources.Gas, SourceKind.Derived, FiveDigits),
        });
    }

    private static IEnumerable<OutsideCheck> Choked()
    {
        var orifice = new CompressibleOrifice { EffectiveAreaSquareMetres = 1e-4, Gas = Textbook.Air };
        var upstream = new GasState(101_325, 300);
        const double printedDigits = 5e-5;
        yield return Check("air of the standard day at sea level", "choked mass flux", "kg/(s m²)", 241.24,
            () => IsentropicFlow.ChokedMassFlux(new GasState(101_325, 288.15), IdealGas.Air), Sources.Gas, SourceKind.Derived, printedDigits);
        yield return Check("1 cm² at 1.01325 bar and 300 K, pressure ratio 0.9", "mass flow", "g/s", 14.592,
            () => orifice.MassFlow(upstream, new GasState(0.9 * 101_325, 300)) * 1e3, Sources.Gas, SourceKind.Derived, printedDigits);
        yield return Check("1 cm² at 1.01325 bar and 300 K, into a vacuum", "mass flow", "g/s", 23.645,
            () => orifice.MassFlow(upstream, default) * 1e3, Sources.Gas, SourceKind.Derived, printedDigits);
    }

    private static IEnumerable<OutsideCheck> Nozzles()
    {
        var inlet = new GasState(1e6, 873);
        var nozzle = new CompressibleOrifice { EffectiveAreaSquareMetres = 50e-4, Gas = Textbook.Air };
        GasState Total() => IsentropicFlow.Total(inlet, 150, Textbook.Air);
        var aircraft = new GasState(54_050, 255.7);
        var source = Sources.Cengel("ex. 17-5");
        const string converging = "converging nozzle, 1 MPa, 873 K, 150 m/s, 50 cm²";
        const string carbonDioxide = "carbon dioxide of γ 1.289 at 473 K and 1400 kPa";
        var co2 = Sources.Cengel("ex. 17-4") + ", as quoted in the tests of the open library fluids";

        return
        [
            Check(converging, "total temperature", "K", 884.19, () => Total().TemperatureKelvin, Sources.Reworked(source), SourceKind.Derived, 2e-4),
            Check(converging, "total pressure", "MPa", 1.0456, () => Total().PressurePascals / 1e6, Sources.Reworked(source), SourceKind.Derived, 2e-4),
            Check(converging, "mass flow into 0.7 MPa", "kg/s", 6.77, () => nozzle.MassFlow(Total(), new GasState(0.7e6, 300)), source, SourceKind.Published) with { Note = "there by interpolation in a table" },
            Check(converging, "mass flow into 0.4 MPa, choked", "kg/s", 7.10, () => nozzle.MassFlow(Total(), new GasState(0.4e6, 300)), source, SourceKind.Published),
            Check(carbonDioxide, "sonic temperature", "K", 413.28, () => 473 * IsentropicFlow.TemperatureRatio(1, 1.289), co2, SourceKind.Published, 1e-4),
            Check(carbonDioxide, "sonic pressure", "kPa", 766.81, () => 1400 * IsentropicFlow.PressureRatio(1, 1.289), co2, SourceKind.Published, 1e-4),
            Check("air at 54.05 kPa, 255.7 K and 250 m/s", "total temperature", "K", 286.8, () => IsentropicFlow.Total(aircraft, 250, Textbook.Air).TemperatureKelvin, Sources.Cengel("ex. 17-1"), SourceKind.Published, 1e-3),
            Check("air at 54.05 kPa, 255.7 K and 250 m/s", "total pressure", "kPa", 80.77, () => IsentropicFlow.Total(aircraft, 250, Textbook.Air).PressurePascals / 1e3, Sources.Cengel("ex. 17-1"), SourceKind.Published, 1e-3),
            Check("air at Mach 0.3, worked example", "area over sonic area", "1", 2.0351, () => IsentropicFlow.AreaRatio(0.3, Gamma), Sources.Cengel("ex. 17-6"), SourceKind.Published, 1e-4),
            Check("air at Mach 0.3, worked example", "static over total temperature", "1", 0.9823, () => IsentropicFlow.TemperatureRatio(0.3, Gamma), Sources.Cengel("ex. 17-6"), SourceKind.Published, 1e-4) with { Note = "the pressure ratio 0.9305 printed beside it is a slip for 0.9395" },
        ];
    }

    private static IEnumerable<OutsideCheck> Plate() =>
    [
        Check("orifice plate 22.2 mm in a 73.9 mm pipe, 100 to 99 kPa", "expansibility", "1", 0.9974739057,
            () => OrificePlate.Expansibility(22.2 / 73.9, 0.99, Gamma), Pascal, SourceKind.Published, 1e-9),
    ];
}
