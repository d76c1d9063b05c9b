using Tickover.Physics.Exhaust;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>λ from four gases: inspection records, worked rows, textbook gases.</summary>
public static class ExhaustChecks
{
    private const string Records = "Estonian Road Administration, open inspection records 2018-2019 (LIIKLUSREGISTER), the analyser's own λ";
    private const string Formula = "Formula of Brettschneider 1979 as in OIML R 99 and UN Regulation 83 (constants from memory), evaluated independently";
    private const string Spindt = "R. S. Spindt, SAE 650507, as transcribed in an open thread, evaluated independently";
    private const string OnFormula = "λ by the formula";
    private const double TwelveCarbons = 12;

    private static readonly ExhaustFuel Octane = new(2.25, 0);

    /// <summary>C 86.3 %, H 13.7 % by mass.</summary>
    private static readonly ExhaustFuel GuptaFuel = new(1.8915, 0);

    private static readonly ExhaustSample CengelGas = Gas(0.88, 0, 10.02, 5.62);
    private static readonly ExhaustSample GuptaGas = Gas(0.5, 0, 12, 4);

    public static CheckGroup Group { get; } = new("Exhaust gas: from four gases to λ",
        [.. Inspected(), .. Worked(), .. Cengel(), .. Gupta(), .. SpindtRows()]);

    internal static ExhaustSample Gas(double monoxide, double hydrocarbonsPpm, double dioxide, double oxygen) => new()
    {
        CarbonMonoxide = monoxide / 100,
        Hydrocarbons = hydrocarbonsPpm * 1e-6,
        CarbonDioxide = dioxide / 100,
        Oxygen = oxygen / 100,
    };

    private static double Lambda(ExhaustSample gas, ExhaustFuel fuel) => LambdaFormula.Of(gas, fuel).Value;

    private static OutsideCheck Check(string subject, string quantity, double published, string source, SourceKind kind, Func<double> ours) => new()
    {
        Subject = subject,
        Quantity = quantity,
        Unit = "1",
        Published = published,
        Ours = ours,
        Source = source,
        Kind = kind,
    };

    private static string Named(double monoxide, double hydrocarbons, double dioxide, double oxygen) =>
        FormattableString.Invariant($"CO {monoxide} %, HC {hydrocarbons} ppm, CO₂ {dioxide} %, O₂ {oxygen} %");

    private static IEnumerable<OutsideCheck> Inspected()
    {
        const double within = 0.005; // 98 of 100 of 11,111 records
        (double Co, double Hc, double Co2, double O2, double Lambda)[] rows =
            [(7.72, 481, 10.2, 0.59, 0.804), (3.372, 95, 12.71, 0.81, 0.936), (5.121, 159, 11.93, 0.04, 0.856), (2.52, 345, 13.0, 0.63, 0.940)];
        return rows.Select(row => Check(
            Named(row.Co, row.Hc, row.Co2, row.O2),
            OnFormula,
            row.Lambda,
            Records,
            SourceKind.Published,
            () => Lambda(Gas(row.Co, row.Hc, row.Co2, row.O2), ExhaustFuel.Regulation)) with
        { Tolerance = within / row.Lambda });
    }

    private static IEnumerable<OutsideCheck> Worked()
    {
        const double digits = 1e-5;
        var (e5, e10) = (new ExhaustFuel(1.89, 0.016), new ExhaustFuel(1.93, 0.033));
        (double Co, double Co2, double O2, double Hc, double Regulation, double E5, double E10, double Twelve)[] rows =
        [
            (0.5, 14.7, 0.7, 150, 1.01190, 1.01112, 1.01104, 1.00598),
            (1.0, 14.0, 0.6, 200, 0.99069, 0.99018, 0.99004, 0.98289),
            (3.5, 12.6, 0.5, 300, 0.91292, 0.91305, 0.91264, 0.90294),
            (6.0, 11.0, 0.3, 400, 0.83567, 0.83624, 0.83549, 0.82420),
            (0.1, 13.5, 2.5, 100, 1.12103, 1.11740, 1.11726, 1.11613),
        ];
        return rows.SelectMany(row =>
        {
            var gas = Gas(row.Co, row.Hc, row.Co2, row.O2);
            var subject = Named(row.Co, row.Hc, row.Co2, row.O2);
            return new[]
            {
                Check(subject, OnFormula + ", regulation's fuel", row.Regulation, Formula, SourceKind.Derived, () => Lambda(gas, ExhaustFuel.Regulation)),
                Check(subject, OnFormula + ", CH1.89 O0.016", row.E5, Formula, SourceKind.Derived, () => Lambda(gas, e5)),
                Check(subject, OnFormula + ", CH1.93 O0.033", row.E10, Formula, SourceKind.Derived, () => Lambda(gas, e10)),
                Check(subject, OnFormula + ", twelve carbons for hexane", row.Twelve, Formula, SourceKind.Derived, () => LambdaFormula.Of(gas, ExhaustFuel.Regulation, TwelveCarbons).Value),
            }.Select(check => check with { Tolerance = digits });
        });
    }

    private static IEnumerable<OutsideCheck> Cengel()
    {
        const string subject = "octane, dry CO₂ 10.02, O₂ 5.62, CO 0.88, N₂ 83.48 %";
        const double notClosing = 0.01;
        const string note = "the book balances nitrogen, we carbon and oxygen; its analysis does not close";
        var book = Sources.Cengel("ex. 15-4");
        yield return Check(subject, "part of theoretical air", 1.306, book, SourceKind.Published, () => Lambda(CengelGas, Octane)) with { Tolerance = notClosing, Note = note };
        yield return Check(subject, "air to fuel by mass", 19.76, book, SourceKind.Published, () => Lambda(CengelGas, Octane) * Octane.StoichiometricRatio) with { Tolerance = notClosing, Note = note };
        yield return Check(subject, "air to fuel by Spindt", 19.76, book, SourceKind.Published, () => SpindtRatio.Of(CengelGas, Octane)) with { Tolerance = notClosing, Note = note };
        yield return Check(subject, OnFormula, 1.2953, Sources.Reworked(book), SourceKind.Derived, () => Lambda(CengelGas, Octane)) with { Tolerance = 1e-4 };
    }

    private static IEnumerable<OutsideCheck> Gupta()
    {
        const string subject = "C 86.3 H 13.7 % fuel, dry CO₂ 12, CO 0.5, O₂ 4, N₂ 83.5 %";
        var book = Sources.Gupta("3.4");
        yield return Check(subject, "part of theoretical air", 1.203, book, SourceKind.Published, () => Lambda(GuptaGas, GuptaFuel));
        yield return Check(subject, "air to fuel by mass", 17.5, book, SourceKind.Published, () => Lambda(GuptaGas, GuptaFuel) * GuptaFuel.StoichiometricRatio);
        yield return Check(subject, "air to fuel by Spindt", 17.5, book, SourceKind.Published, () => SpindtRatio.Of(GuptaGas, GuptaFuel));
    }

    private static IEnumerable<OutsideCheck> SpindtRows()
    {
        const double digits = 1e-4;
        var petrol = new ExhaustFuel(1.85, 0);
        yield return Check("petrol CH1.85, complete burning", "air to fuel by Spindt", 14.5555, Spindt, SourceKind.Derived, () => SpindtRatio.Stoichiometric(petrol)) with { Tolerance = digits };
        yield return Check("octane gas of Çengel 15-4", "air to fuel by Spindt", 19.573, Spindt, SourceKind.Derived, () => SpindtRatio.Of(CengelGas, Octane)) with { Tolerance = digits };
        yield return Check("gas of Gupta 3.4, CH1.9", "air to fuel by Spindt", 17.545, Spindt, SourceKind.Derived, () => SpindtRatio.Of(GuptaGas, new ExhaustFuel(1.9, 0))) with { Tolerance = digits };
        yield return Check("gas of Gupta 3.4, CH1.9", OnFormula, 1.1996, Formula, SourceKind.Derived, () => Lambda(GuptaGas, new ExhaustFuel(1.9, 0))) with { Tolerance = digits };
    }
}
