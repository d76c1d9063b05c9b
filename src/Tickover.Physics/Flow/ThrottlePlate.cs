namespace Tickover.Physics.Flow;

/// <summary>A throttle plate on its spindle: the area left open, seen along the bore.</summary>
/// <remarks>
/// R. L. Harrington and J. A. Bolt, SAE 700082, as in J. B. Heywood, 1988, eq. 7.18 to 7.21 (from memory);
/// derived again from the projected ellipse. The seated plate is taken as tight: by-pass drillings are the user's to add.
/// </remarks>
public sealed record ThrottlePlate
{
    /// <summary>Bore, m; above zero.</summary>
    public required double BoreMetres { get; init; }

    /// <summary>Angle of the seated plate from the plane square to the bore, radians; 0 to below π/2.</summary>
    public required double ClosedAngleRadians { get; init; }

    /// <summary>Spindle diameter, m; 0 to below the bore.</summary>
    public required double SpindleDiameterMetres { get; init; }

    /// <summary>Angle from which on the spindle alone obstructs the bore, radians.</summary>
    public double FullyOpenAngleRadians => Math.Acos(Math.Min(1, SpindleRatio * Math.Cos(ClosedAngleRadians)));

    private double SpindleRatio => SpindleDiameterMetres / BoreMetres;

    /// <summary>Open area, m².</summary>
    /// <param name="angleRadians">Angle of the plate from the plane square to the bore, radians. Past square on, the plate closes again.</param>
    /// <returns>m²; zero up to the closed angle, then rising to the bore less the spindle's strip.</returns>
    public double OpenArea(double angleRadians)
    {
        var a = Math.Min(1, SpindleRatio);
        var k = Math.Abs(Math.Cos(angleRadians)) / Math.Cos(ClosedAngleRadians);
        if (k >= 1)
        {
            return 0;
        }

        // Beyond the fully open angle the plate's edge hides behind the spindle.
        var open = k <= a ? 1 - Strip(a, 1) : 1 - k + Strip(a, k) - Strip(a, 1); // flow (16)
        return Circle.Area(BoreMetres) * open;
    }

    // Part of the bore that a strip as wide as the spindle covers of an ellipse with the bore as long axis and k times it as short axis.
    private static double Strip(double a, double k)
    {
        if (a <= 0)
        {
            return 0;
        }

        var ratio = Math.Min(1, a / k); // rounding may lift it above one
        return 2 / Math.PI * (a * Math.Sqrt(1 - ratio * ratio) + k * Math.Asin(ratio));
    }
}
