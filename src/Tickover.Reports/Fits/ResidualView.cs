using Tickover.Reports.Mixture;
using Tickover.Workshop.Calibration;

namespace Tickover.Reports.Fits;

/// <summary>What is to be shown of the readings beside a fit.</summary>
public sealed record ResidualView
{
    /// <summary>The readings beside the fit.</summary>
    public required IReadOnlyList<FittedPoint> Points { get; init; }

    /// <summary>Standard deviation of what the model leaves over, as a part of λ.</summary>
    public required double FieldDeviation { get; init; }

    /// <summary>The size.</summary>
    public PictureSize Size { get; init; } = PictureSize.Full;

    /// <summary>Begins every id in the drawing; must differ between drawings on one page. Letters, digits, hyphens.</summary>
    public string IdPrefix { get; init; } = "residuals";

    /// <summary>The view of a fit.</summary>
    /// <param name="fit">The fit.</param>
    /// <returns>The view in full size.</returns>
    public static ResidualView Of(CarFit fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return new ResidualView { Points = fit.Points, FieldDeviation = fit.FieldDeviation };
    }

    internal IReadOnlyList<Residual> Residuals => [.. Points.Select(p => new Residual(p, FieldDeviation))];
}
