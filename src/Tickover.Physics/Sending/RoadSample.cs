namespace Tickover.Physics.Sending;

/// <summary>What an accelerometer fixed to the car reads: acceleration less gravity, in the car's axes.</summary>
/// <param name="AheadMetresPerSecondSquared">Forwards: above zero when the car gains speed or points uphill, m/s².</param>
/// <param name="LeftMetresPerSecondSquared">To the left: above zero in a left-hand bend or with the left wheels higher, m/s².</param>
/// <param name="UpMetresPerSecondSquared">Upwards: gravity on the level, m/s²; above zero.</param>
public readonly record struct RoadSample(double AheadMetresPerSecondSquared, double LeftMetresPerSecondSquared, double UpMetresPerSecondSquared)
{
    /// <summary>Standard gravity, m/s².</summary>
    public const double Gravity = 9.80665;

    /// <summary>Standing on the level.</summary>
    public static RoadSample Level { get; } = new(0, 0, Gravity);

    /// <summary>What is read on a road with a slope and a camber.</summary>
    /// <param name="alongMetresPerSecondSquared">Acceleration along the road, m/s².</param>
    /// <param name="leftMetresPerSecondSquared">Acceleration to the left, level, m/s²: v²/R in a left-hand bend.</param>
    /// <param name="grade">Rise over level way; above zero uphill.</param>
    /// <param name="camber">Rise of the road to the left over level width; above zero where the left wheels stand higher.</param>
    /// <returns>The reading.</returns>
    public static RoadSample On(double alongMetresPerSecondSquared, double leftMetresPerSecondSquared, double grade, double camber)
    {
        var (climb, bank) = (Math.Atan(grade), Math.Atan(camber));
        var (sinClimb, cosClimb) = Math.SinCos(climb);
        var (sinBank, cosBank) = Math.SinCos(bank);
        var pull = Gravity * cosClimb;
        return new RoadSample( // sending (2)
            alongMetresPerSecondSquared + Gravity * sinClimb,
            leftMetresPerSecondSquared * cosBank + pull * sinBank,
            pull * cosBank - leftMetresPerSecondSquared * sinBank);
    }
}
