namespace Tickover.Physics.Linkages;

/// <summary>A rod with a ball at either end between levers on two shafts that lie anyhow in space. docs/physics/linkages.md (6) to (11).</summary>
/// <remarks>The textbooks' spatial RSSR four-bar. On parallel shafts with the levers in one plane it is the planar four-bar exactly.</remarks>
public sealed record BallRod
{
    /// <summary>The driving shaft.</summary>
    public required ShaftLine Driver { get; init; }

    /// <summary>The lever on it.</summary>
    public required Lever DriverLever { get; init; }

    /// <summary>The driven shaft.</summary>
    public required ShaftLine Driven { get; init; }

    /// <summary>The lever on it.</summary>
    public required Lever DrivenLever { get; init; }

    /// <summary>Between the centres of the balls, m; above zero.</summary>
    public required double LengthMetres { get; init; }

    /// <summary>Length at which the rod drops on with both shafts where they are, m.</summary>
    /// <param name="driverRadians">How far the driving shaft has turned, radians.</param>
    /// <param name="drivenRadians">How far the driven shaft has turned, radians.</param>
    /// <returns>Distance of the balls, m.</returns>
    public double Distance(double driverRadians, double drivenRadians) => Span(driverRadians, drivenRadians).Length;

    /// <summary>Both ways it goes together at a position of the driving shaft.</summary>
    /// <param name="driverRadians">How far the driving shaft has turned from rest, radians.</param>
    /// <returns>The driven shaft's turn from rest, −π to π, for either assembly; null where the rod does not reach.</returns>
    public (double First, double Second)? At(double driverRadians)
    {
        Precondition.Finite(driverRadians);
        var (p, q, s) = Closure(driverRadians);
        var ratio = s / Math.Sqrt(p * p + q * q);
        if (!(Math.Abs(ratio) <= 1))
        {
            return null;
        }

        var (middle, half) = (Math.Atan2(q, p), Math.Acos(ratio)); // linkages (8)
        return (Principal(middle + half), Principal(middle - half));
    }

    /// <summary>One way it goes together.</summary>
    /// <param name="driverRadians">How far the driving shaft has turned from rest, radians.</param>
    /// <param name="assembly">Which way.</param>
    /// <returns>The driven shaft's turn from rest, −π to π; null where the rod does not reach.</returns>
    public double? At(double driverRadians, RodAssembly assembly) =>
        At(driverRadians) is { } both ? assembly is RodAssembly.First ? both.First : both.Second : null;

    /// <summary>By how much the rod is too long or too short to go on at all at a position of the driving shaft.</summary>
    /// <param name="driverRadians">How far the driving shaft has turned from rest, radians.</param>
    /// <returns>m, positive: too long; zero where it goes on.</returns>
    public double Misfit(double driverRadians)
    {
        var (p, q, s) = Closure(driverRadians);
        var swing = Math.Sqrt(p * p + q * q);

        // The square of the distance of the balls runs from middle − swing to middle + swing as the driven lever turns.
        var middle = LengthMetres * LengthMetres - s;
        return LengthMetres - Math.Clamp(LengthMetres, Math.Sqrt(Math.Max(0, middle - swing)), Math.Sqrt(middle + swing));
    }

    /// <summary>What small changes do at a position, and how squarely the rod pulls.</summary>
    /// <param name="driverRadians">How far the driving shaft has turned, radians.</param>
    /// <param name="drivenRadians">How far the driven shaft has turned, radians.</param>
    /// <returns>The rates; infinite where the rod is in line with the driven lever.</returns>
    public BallRodRates Rates(double driverRadians, double drivenRadians)
    {
        var along = Span(driverRadians, drivenRadians);
        var driving = Driver.Direction.Cross(Driver.Arm(DriverLever, driverRadians));
        var driven = Driven.Direction.Cross(Driven.Arm(DrivenLever, drivenRadians));
        var length = along.Length;
        return new BallRodRates
        {
            DrivenPerDriver = along.Dot(driving) / along.Dot(driven),                                 // linkages (9)
            DrivenPerMetre = length / along.Dot(driven),                                              // linkages (10)
            DriverSine = along.Dot(driving) / (length * DriverLever.LengthMetres),                    // linkages (11)
            DrivenSine = along.Dot(driven) / (length * DrivenLever.LengthMetres),
        };
    }

    private static double Principal(double radians) => Math.IEEERemainder(radians, 2 * Math.PI);

    private SpaceVector Span(double driver, double driven) => Driven.Ball(DrivenLever, driven) - Driver.Ball(DriverLever, driver);

    // P cos ψ + Q sin ψ = S of the driven lever's turn from rest.
    private (double P, double Q, double S) Closure(double driver)
    {
        var arm = Driven.Arm(DrivenLever, 0);
        var e = Driven.At(DrivenLever.AlongMetres) - Driver.Ball(DriverLever, driver);
        return (2 * e.Dot(arm), 2 * e.Dot(Driven.Direction.Cross(arm)), LengthMetres * LengthMetres - e.Dot(e) - arm.Dot(arm)); // linkages (7)
    }
}
