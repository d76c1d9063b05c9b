using CsCheck;
using Tickover.Physics.Flow;

namespace Tickover.Physics.Tests.Flow;

public sealed class ThrottlePlateTests
{
    private static readonly Gen<ThrottlePlate> AnyPlate = Gen.Select(Gen.Double[0.02, 0.06], Gen.Double[0, 20], Gen.Double[0, 0.4]).Select((bore, closed, part) => new ThrottlePlate
    {
        BoreMetres = bore,
        ClosedAngleRadians = double.DegreesToRadians(closed),
        SpindleDiameterMetres = part * bore,
    });

    [Fact]
    public void Seated_and_below_nothing_is_open() =>
        Gen.Select(AnyPlate, Gen.Double[0, 1]).Sample((plate, part) => plate.OpenArea(part * plate.ClosedAngleRadians) == 0);

    [Fact]
    public void Wide_open_the_spindles_strip_is_missing() =>
        AnyPlate.Sample(plate =>
        {
            // strip of half width d/2 through a circle: (D²/2)(a sqrt(1-a²) + asin a)
            var a = plate.SpindleDiameterMetres / plate.BoreMetres;
            var strip = plate.BoreMetres * plate.BoreMetres / 2 * (a * Math.Sqrt(1 - a * a) + Math.Asin(a));
            return Math.Abs(plate.OpenArea(Math.PI / 2) - (Circle.Area(plate.BoreMetres) - strip)) < 1e-12;
        });

    [Fact]
    public void The_area_is_that_of_the_projected_ellipse_by_quadrature() =>
        Gen.Select(AnyPlate, Gen.Double[0.05, 0.95]).Sample((plate, part) =>
        {
            var angle = plate.ClosedAngleRadians + part * (Math.PI / 2 - plate.ClosedAngleRadians);
            return Math.Abs(plate.OpenArea(angle) - ByQuadrature(plate, angle)) < 2e-5 * Circle.Area(plate.BoreMetres);
        }, iter: 200);

    [Fact]
    public void Opening_never_closes_up_to_a_right_angle() =>
        Gen.Select(AnyPlate, Gen.Double[0, 89.9], Gen.Double[0, 0.1]).Sample((plate, degrees, more) =>
            plate.OpenArea(double.DegreesToRadians(degrees + more)) >= plate.OpenArea(double.DegreesToRadians(degrees)) - 1e-15);

    [Fact]
    public void Past_a_right_angle_it_closes_as_it_opened() =>
        Gen.Select(AnyPlate, Gen.Double[0, 90]).Sample((plate, degrees) =>
            Math.Abs(plate.OpenArea(double.DegreesToRadians(90 + degrees)) - plate.OpenArea(double.DegreesToRadians(90 - degrees))) < 1e-12);

    [Fact]
    public void There_is_no_step_where_the_edge_hides_behind_the_spindle() =>
        AnyPlate.Where(plate => plate.SpindleDiameterMetres > 0).Sample(plate =>
            Math.Abs(plate.OpenArea(plate.FullyOpenAngleRadians - 1e-7) - plate.OpenArea(plate.FullyOpenAngleRadians + 1e-7)) < 3e-7 * Circle.Area(plate.BoreMetres)); // 2e-7 rad at a slope of at most one bore a radian

    [Fact]
    public void The_area_is_finite_and_within_the_bore_at_any_angle() =>
        Gen.Select(AnyPlate, Gen.Double[-1e6, 1e6]).Sample((plate, angle) =>
            plate.OpenArea(angle) is >= 0 and var area && area <= Circle.Area(plate.BoreMetres));

    // Slices along the spindle: each half bore of height h leaves h - max(k h, d/2) open.
    private static double ByQuadrature(ThrottlePlate plate, double angle)
    {
        const int slices = 20_000;
        var radius = plate.BoreMetres / 2;
        var k = Math.Cos(angle) / Math.Cos(plate.ClosedAngleRadians);
        var sum = 0.0;
        for (var slice = 0; slice < slices; slice++)
        {
            var x = radius * ((slice + 0.5) * 2 / slices - 1);
            var height = Math.Sqrt(radius * radius - x * x);
            sum += Math.Max(0, height - Math.Max(k * height, plate.SpindleDiameterMetres / 2));
        }

        return 2 * sum * 2 * radius / slices;
    }
}
