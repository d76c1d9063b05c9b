using Tickover.Physics.Flow;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>The nozzle's lip: ratio with and without it, and the speed at which fuel starts.</summary>
public static class LipChecks
{
    private const double ReworkedDigits = 1e-4;

    public static CheckGroup Group { get; } = new("The nozzle's lip",
    [
        .. Example(Carburettor(20, 1.14, 0.80, 0.65, 1.2, 750, 5), 8000, Sources.Ganesan("8.5"), (null, null, null), (15.1526, 15.1876, 7.8302)),
        .. Example(Carburettor(22, 1.2, 0.82, 0.70, 1.2, 750, 4), 7500, Sources.Gupta("9.6"), (15.75, 15.78, 7.0), (15.7492, 15.7802, 7.0036)),
        .. Example(Carburettor(18, 1.2, 0.82, 0.65, 1.2, 750, 6), 6500, Sources.Rajput("11.9"), (11.35, 11.39, 8.58), (11.3538, 11.3926, 8.5776)),
        .. Example(Carburettor(75, 5, 0.85, 0.70, 1.29, 720, 5), 14_710, Sources.Keswani("9.8 and 9.9"), (11.56, null, 7.4), (11.5646, 11.5785, 7.400)),
        new OutsideCheck
        {
            Subject = "lip 6.35 mm above petrol of 720 kg/m³",
            Quantity = "air speed at which fuel starts",
            Unit = "m/s",
            Published = 8.34,
            Ours = () => Carburettor(28.64, 1.6, 0.8, 0.75, 1.29, 720, 6.35).StartOfFlowSpeed,
            Source = Sources.Rajput("11.4"),
            Kind = SourceKind.Published,
        },
        .. Factors(),
    ]);

    private static ElementaryCarburettor Carburettor(double choke, double jet, double cdAir, double cdFuel, double air, double fuel, double lip) => new()
    {
        ChokeDiameterMetres = choke * 1e-3,
        JetDiameterMetres = jet * 1e-3,
        ChokeCoefficient = cdAir,
        JetCoefficient = cdFuel,
        AirDensity = air,
        FuelDensity = fuel,
        LipHeightMetres = lip * 1e-3,
        Gravity = Textbook.Gravity,
    };

    private static IEnumerable<OutsideCheck> Example(
        ElementaryCarburettor carburettor,
        double depression,
        string source,
        (double? NoLip, double? Lip, double? Speed) printed,
        (double NoLip, double Lip, double Speed) reworked)
    {
        var rows = new (string Quantity, string Unit, double? Printed, double Reworked, Func<double> Ours)[]
        {
            ("air to fuel by mass, no lip", "1", printed.NoLip, reworked.NoLip, () => (carburettor with { LipHeightMetres = 0 }).AirFuelRatio(depression)),
            ("air to fuel by mass, with lip", "1", printed.Lip, reworked.Lip, () => carburettor.AirFuelRatio(depression)),
            ("air speed at which fuel starts", "m/s", printed.Speed, reworked.Speed, () => carburettor.StartOfFlowSpeed),
        };
        foreach (var row in rows)
        {
            var derived = new OutsideCheck
            {
                Subject = FormattableString.Invariant($"{carburettor.ChokeDiameterMetres * 1e3:0} mm choke at {depression} Pa"),
                Quantity = row.Quantity,
                Unit = row.Unit,
                Published = row.Reworked,
                Ours = row.Ours,
                Source = Sources.Reworked(source),
                Kind = SourceKind.Derived,
                Tolerance = ReworkedDigits,
            };
            if (row.Printed is { } figure)
            {
                yield return derived with { Published = figure, Source = source, Kind = SourceKind.Published, Tolerance = OutsideCheck.TextbookTolerance };
            }

            yield return derived;
        }
    }

    private static IEnumerable<OutsideCheck> Factors()
    {
        const double threeDigits = 5e-4;
        (double Depression, double Factor)[] rows = [(60, 1.927), (100, 1.335), (300, 1.082), (1000, 1.0227), (5000, 1.0044)];
        return rows.Select(row => new OutsideCheck
        {
            Subject = FormattableString.Invariant($"lip 6 mm above petrol of 745 kg/m³ at {row.Depression} Pa"),
            Quantity = "factor on air to fuel",
            Unit = "1",
            Published = row.Factor,
            Ours = () => Carburettor(30, 1.4, 1, 1, 1.2, 745, 6).LipFactor(row.Depression),
            Source = "Bernoulli, evaluated independently",
            Kind = SourceKind.Derived,
            Tolerance = threeDigits,
        });
    }
}
