using Tickover.Physics.Flow;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Open areas: throttle plate, partly covered holes.</summary>
public static class ThrottleChecks
{
    private const double Bore = 0.040;
    private const double SquareMillimetres = 1e6;

    public static CheckGroup Group { get; } = new("Throttle plate and holes", [.. Plate(), .. Holes()]);

    private static IEnumerable<OutsideCheck> Plate()
    {
        const double tabulated = 2e-5;
        (double Degrees, double Area)[] withSpindle =
        [
            (6, 2.1029), (10, 14.3137), (20, 71.0061), (30, 163.5010), (40, 288.8211), (50, 442.7466), (60, 619.3822),
            (70, 808.1920), (78.5, 938.7834), (90, 938.7834),
        ];
        (double Degrees, double Area)[] withoutSpindle = [(10, 14.3639), (40, 290.3201), (90, 1256.6371)];
        return
        [
            .. withSpindle.Select(row => At(0.2 * Bore, "8 mm spindle", row.Degrees, row.Area)),
            .. withoutSpindle.Select(row => At(0, "no spindle", row.Degrees, row.Area)),
        ];

        static OutsideCheck At(double spindle, string words, double degrees, double published) => new()
        {
            Subject = FormattableString.Invariant($"40 mm plate seated at 5°, {words}, at {degrees}°"),
            Quantity = "open area",
            Unit = "mm²",
            Published = published,
            Ours = () => SquareMillimetres * new ThrottlePlate
            {
                BoreMetres = Bore,
                ClosedAngleRadians = double.DegreesToRadians(5),
                SpindleDiameterMetres = spindle,
            }.OpenArea(double.DegreesToRadians(degrees)),
            Source = Sources.Harrington,
            Kind = SourceKind.Derived,
            Tolerance = tabulated,
        };
    }

    private static IEnumerable<OutsideCheck> Holes()
    {
        (double Uncovered, double Area)[] rows = [(0.1, 0.04088), (0.25, 0.15355), (0.5, 0.39270), (0.75, 0.63185)];
        return rows.Select(row => new OutsideCheck
        {
            Subject = FormattableString.Invariant($"1 mm hole uncovered by {row.Uncovered} mm"),
            Quantity = "open area",
            Unit = "mm²",
            Published = row.Area,
            Ours = () => SquareMillimetres * Circle.SegmentArea(1e-3, row.Uncovered * 1e-3),
            Source = Sources.Geometry,
            Kind = SourceKind.Derived,
            Tolerance = 2e-4,
        });
    }
}
