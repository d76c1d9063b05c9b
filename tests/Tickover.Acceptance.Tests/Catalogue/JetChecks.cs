using Tickover.Physics.Flow;
using Tickover.Physics.Fuels;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Jet coefficients over Reynolds number, and jets as they run.</summary>
public static class JetChecks
{
    private static readonly FuelProperties Petrol = new()
    {
        DensityKilogramsPerCubicMetre = 745,
        ViscosityPascalSeconds = 0.50e-3,
        StoichiometricRatio = 14.572,
    };

    public static CheckGroup Group { get; } = new("Jets", [.. Table(), .. Running()]);

    private static IEnumerable<OutsideCheck> Table()
    {
        const double fourDigits = 2e-4;
        double[] reynolds = [100, 200, 500, 1000, 2000, 5000, 1e4, 2e4];
        (double Length, double[] Coefficients)[] rows =
        [
            (2, [0.4284, 0.5605, 0.6879, 0.7446, 0.7774, 0.8015, 0.8081, 0.8088]),
            (3, [0.3575, 0.4946, 0.6426, 0.7142, 0.7574, 0.7904, 0.7994, 0.8001]),
            (5, [0.2685, 0.4003, 0.5674, 0.6598, 0.7199, 0.7685, 0.7819, 0.7826]),
            (10, [0.1654, 0.2706, 0.4380, 0.5526, 0.6384, 0.7158, 0.7385, 0.7392]),
        ];
        return rows.SelectMany(row => reynolds.Zip(row.Coefficients, (re, cd) => new OutsideCheck
        {
            Subject = FormattableString.Invariant($"jet {row.Length} diameters long at Reynolds number {re}"),
            Quantity = "discharge coefficient",
            Unit = "1",
            Published = cd,
            Ours = () => JetDischarge.Coefficient(re, row.Length),
            Source = Sources.Lichtarowicz,
            Kind = SourceKind.Derived,
            Tolerance = fourDigits,
        }));
    }

    private static IEnumerable<OutsideCheck> Running()
    {
        const double printedDigits = 1e-3;
        (double Millimetres, double Drop, double Reynolds, double Coefficient)[] rows =
        [
            (0.5, 200, 314, 0.574), (0.5, 5000, 2072, 0.759), (1.0, 1000, 1839, 0.753), (1.4, 200, 1103, 0.722),
            (1.4, 5000, 6073, 0.795), (1.4, 15_000, 10_583, 0.800), (2.0, 5000, 8722, 0.799),
        ];
        return
        [
            .. rows.SelectMany(row => new[]
            {
                At(row.Millimetres, row.Drop, "Reynolds number", "1", row.Reynolds, point => point.Reynolds, 2e-3),
                At(row.Millimetres, row.Drop, "discharge coefficient", "1", row.Coefficient, point => point.DischargeCoefficient, printedDigits),
            }),
            At(1.4, 5000, "fuel flow", "g/s", 3.34, point => point.MassFlowKilogramsPerSecond * 1e3, 2e-3),
        ];

        static OutsideCheck At(double millimetres, double drop, string quantity, string unit, double published, Func<JetPoint, double> ours, double tolerance) => new()
        {
            Subject = FormattableString.Invariant($"{millimetres:0.0} mm jet, 3 diameters long, at {drop} Pa of petrol 745 kg/m³, 0.50 mPa s"),
            Quantity = quantity,
            Unit = unit,
            Published = published,
            Ours = () => ours(JetFlow.At(millimetres * 1e-3, 3, drop, Petrol)),
            Source = Sources.Lichtarowicz,
            Kind = SourceKind.Derived,
            Tolerance = tolerance,
        };
    }
}
