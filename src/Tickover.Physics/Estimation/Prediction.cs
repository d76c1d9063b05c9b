namespace Tickover.Physics.Estimation;

/// <summary>A prediction beyond the model itself.</summary>
/// <param name="Correction">What to add to the model, by place.</param>
/// <param name="Covariance">Covariance of the sum, [place, place], without the error of a reading taken there.</param>
public sealed record Prediction(IReadOnlyList<double> Correction, double[,] Covariance)
{
    /// <summary>Standard deviation at a place.</summary>
    /// <param name="place">Index of the place.</param>
    /// <returns>The deviation, not below zero.</returns>
    public double Deviation(int place) => Math.Sqrt(Math.Max(0, Covariance[place, place]));
}
