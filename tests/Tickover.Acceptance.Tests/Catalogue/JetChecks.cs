using Tickover.Physics.Flow;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Jet coefficients over Reynolds number.</summary>
public static class JetChecks
{
    public static CheckGroup Group { get; } = new("Jets", [.. Table()]);

    private static IEnumerable<OutsideCheck> Table()
    {
        const double fourDigits = 2e-4;
        const double halfUnit = 7e-4; // of a figure of three digits
        double[] reynolds = [100, 200, 500, 1000, 2000, 5000, 1e4, 2e4];
        (double Length, double[] Coefficients)[] rows =
        [
            (2, [0.4284, 0.5605, 0.6879, 0.7446, 0.7774, 0.8015, 0.8081, 0.8088]),
            (3, [0.3575, 0.4946, 0.6426, 0.7142, 0.7574, 0.7904, 0.7994, 0.8001]),
            (5, [0.2685, 0.4003, 0.5674, 0.6598, 0.7199, 0.7685, 0.7819, 0.7826]),
            (10, [0.1654, 0.2706, 0.4380, 0.5526, 0.6384, 0.7158, 0.7385, 0.7392]),
        ];
        return [Row(10, 2, 0.0817) with { Tolerance = halfUnit }, .. rows.SelectMany(row => reynolds.Zip(row.Coefficients, (re, cd) => Row(re, row.Length, cd)))];

        static OutsideCheck Row(double re, double length, double cd) => new()
        {
            Subject = FormattableString.Invariant($"jet {length} diameters long at Reynolds number {re}"),
            Quantity = "discharge coefficient",
            Unit = "1",
            Published = cd,
            Ours = () => JetDischarge.Coefficient(re, length),
            Source = Sources.Lichtarowicz,
            Kind = SourceKind.Derived,
            Tolerance = fourDigits,
        };
    }
}
