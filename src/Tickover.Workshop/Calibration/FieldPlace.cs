using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Calibration;

/// <summary>Where a reading stands for the field of what the model leaves over: speed, opening, and the jets it was taken with.</summary>
internal static class FieldPlace
{
    private const double OpeningScale = 4;       // degrees; circuits hand over within a few degrees near shut, within tens near open

    /// <summary>Over which the field keeps its value, in the coordinates of <see cref="Of"/>. Assumed; the study in docs/studies.md tries them.</summary>
    internal static IReadOnlyList<double> Lengths { get; } = [0.5, 0.6, 1.0, 1.0, 0.8, 1.0];

    internal static double[] Of(Car car, double rpm, double degrees)
    {
        var figures = car.Barrels[0].Figures;
        return
        [
            Math.Log(rpm),
            Math.Log(1 + Math.Max(0, degrees) / OpeningScale),
            2 * Math.Log(figures.Si("barrel.mainJet")),
            2 * Math.Log(figures.Si("barrel.idleJet")),
            2 * Math.Log(figures.Si("barrel.choke")),
            Math.Log(Math.Max(1e-5, figures.Si("barrel.airCorrector"))),
        ];
    }
}
