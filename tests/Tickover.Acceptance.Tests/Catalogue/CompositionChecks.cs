using Tickover.Physics.Exhaust;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Exhaust gas from λ, and the way back.</summary>
public static class CompositionChecks
{
    private const string Script = "Script of MIT OpenCourseWare 2.61 (spring 2017), water-gas equilibrium of rich exhaust";
    private const string Independent = Script + "; evaluated independently with K 3.5, air of 20.95 % oxygen";
    private const string Expected = "CO by λ as a German-language forum prints it, pure petrol without misfire or leak";
    private const double ScriptConstant = 3.7;
    private const double NoHydrogen = 1e9; // a water-gas constant that leaves none
    private const double LastDigit = 0.0015; // three decimals of a per cent, and nitrogen taken as 3.773

    private static readonly ExhaustFuel Petrol = new(1.85, 0);

    public static CheckGroup Group { get; } = new("Exhaust gas: from λ to the gases",
        [.. Table(), .. ScriptRows(), .. WithoutHydrogen(), .. Closure(), .. OtherConstant(), .. Trade()]);

    private static OutsideCheck Check(string subject, string quantity, string unit, double published, string source, SourceKind kind, Func<double> ours) => new()
    {
        Subject = subject,
        Quantity = quantity,
        Unit = unit,
        Published = published,
        Ours = ours,
        Source = source,
        Kind = kind,
    };

    private static IEnumerable<OutsideCheck> Percents(string subject, string source, Func<ExhaustComposition> gas, params (string Name, double Published, Func<ExhaustComposition, double> Part)[] rows) =>
        rows.Where(row => row.Published > 0).Select(row => Check(subject, row.Name, "%", row.Published, source, SourceKind.Derived, () => row.Part(gas()) * 100) with
        {
            Tolerance = Math.Max(1e-4, LastDigit / row.Published),
        });

    private static IEnumerable<OutsideCheck> Table()
    {
        (double Lambda, double Co2, double Co, double H2, double O2, double N2, double Water)[] rows =
        [
            (0.70, 7.782, 11.673, 5.399, 0, 75.146, 11.188), (0.80, 10.328, 7.608, 2.885, 0, 79.179, 12.054), (0.85, 11.610, 5.623, 1.938, 0, 80.829, 12.283),
            (0.88, 12.374, 4.455, 1.452, 0, 81.719, 12.369), (0.90, 12.880, 3.687, 1.159, 0, 82.274, 12.408), (0.95, 14.127, 1.810, 0.521, 0, 83.543, 12.450),
            (1.00, 15.342, 0, 0, 0, 84.658, 12.428), (1.05, 14.562, 0, 0, 1.065, 84.373, 11.871), (1.10, 13.858, 0, 0, 2.027, 84.115, 11.362), (1.20, 12.636, 0, 0, 3.696, 83.668, 10.465),
        ];
        return rows.SelectMany(row => Percents(
            FormattableString.Invariant($"CH1.85 at λ {row.Lambda:0.00}"),
            Independent,
            () => WaterGasEquilibrium.At(row.Lambda, Petrol),
            ("CO₂, dry", row.Co2, gas => gas.CarbonDioxide),
            ("CO, dry", row.Co, gas => gas.CarbonMonoxide),
            ("H₂, dry", row.H2, gas => gas.Hydrogen),
            ("O₂, dry", row.O2, gas => gas.Oxygen),
            ("N₂, dry", row.N2, gas => gas.Nitrogen),
            ("H₂O, wet", row.Water, gas => gas.WetWater)));
    }

    private static IEnumerable<OutsideCheck> ScriptRows()
    {
        var fuel = new ExhaustFuel(1.87, 0);
        (double Lambda, double Co2, double Co, double H2)[] rows = [(0.80, 10.217, 7.680, 2.826), (0.90, 12.801, 3.724, 1.126), (1.00, 15.298, 0, 0)];
        return rows.SelectMany(row => Percents(
            FormattableString.Invariant($"CH1.87 at λ {row.Lambda:0.00}, K 3.7"),
            Script + "; evaluated independently",
            () => WaterGasEquilibrium.At(row.Lambda, fuel, ScriptConstant),
            ("CO₂, dry", row.Co2, gas => gas.CarbonDioxide),
            ("CO, dry", row.Co, gas => gas.CarbonMonoxide),
            ("H₂, dry", row.H2, gas => gas.Hydrogen)));
    }

    private static IEnumerable<OutsideCheck> WithoutHydrogen()
    {
        const string subject = "C 86 H 14 % fuel, fuel to air 1.25 times what burns, no hydrogen allowed";
        const double rich = 1 / 1.25;
        var fuel = new ExhaustFuel(14 / 1.008 / (86 / 12.011), 0);
        (string Name, double Published, Func<ExhaustComposition, double> Part)[] rows =
            [("CO, dry", 10.88, gas => gas.CarbonMonoxide), ("CO₂, dry", 7.38, gas => gas.CarbonDioxide), ("N₂, dry", 81.74, gas => gas.Nitrogen)];
        return rows.Select(row => Check(
            subject, row.Name, "%", row.Published, Sources.Gupta("3.5"), SourceKind.Published,
            () => row.Part(WaterGasEquilibrium.At(rich, fuel, NoHydrogen)) * 100) with
        { Note = "equilibrium gives 7.6 % of CO: what leaving out hydrogen costs" });
    }

    private static IEnumerable<OutsideCheck> Closure()
    {
        const double exact = 1e-9;
        (string Name, ExhaustFuel Fuel)[] fuels = [("CH1.85", Petrol), ("CH1.887 O0.0162", new(1.887, 0.0162)), ("ethanol", new(3, 0.5))];
        return
            from fuel in fuels
            from lambda in new[] { 0.7, 0.85, 0.95, 1, 1.2 }
            select Check(
                FormattableString.Invariant($"gas of {fuel.Name} at λ {lambda:0.00}"), "λ by the formula from that gas", "1", lambda,
                "Closure of the two ways: the formula holds the same equilibrium", SourceKind.Derived,
                () => LambdaFormula.Of(WaterGasEquilibrium.At(lambda, fuel.Fuel).ToExhaustSample(), fuel.Fuel).Value) with
            { Tolerance = exact };
    }

    private static IEnumerable<OutsideCheck> OtherConstant()
    {
        const double rounded = 1e-4;
        return new[] { (Lambda: 0.95, Off: -0.0006), (Lambda: 0.70, Off: -0.0037) }.Select(row => Check(
            FormattableString.Invariant($"gas of CH1.85 at λ {row.Lambda:0.00}, K 3.7"), "λ by the formula with its own K 3.5", "1", row.Lambda + row.Off,
            "Formula and equilibrium, evaluated independently", SourceKind.Derived,
            () => LambdaFormula.Of(WaterGasEquilibrium.At(row.Lambda, Petrol, ScriptConstant).ToExhaustSample(), Petrol).Value) with
        { Tolerance = rounded });
    }

    private static IEnumerable<OutsideCheck> Trade()
    {
        const double oneDigit = 0.05; // printed with one decimal
        return new[] { (Lambda: 0.95, Monoxide: 1.9), (Lambda: 0.90, Monoxide: 3.7) }.Select(row => Check(
            FormattableString.Invariant($"petrol CH1.86 at λ {row.Lambda:0.00}"), "CO, dry", "%", row.Monoxide, Expected, SourceKind.CommonPractice,
            () => WaterGasEquilibrium.At(row.Lambda, new ExhaustFuel(1.86, 0)).CarbonMonoxide * 100) with
        { Tolerance = oneDigit });
    }
}
