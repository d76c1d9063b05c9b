namespace Tickover.Physics.Sending;

/// <summary>Two tanks, the pipe between them, a sender and a gauge on a moving car. docs/physics/sending.md.</summary>
/// <param name="Left">The left tank.</param>
/// <param name="Right">The right tank.</param>
/// <param name="Pipe">The pipe between them.</param>
public sealed record TwoTanks(LinkedTank Left, LinkedTank Right, CrossPipe Pipe)
{
    /// <summary>Longest step of the march, s.</summary>
    public const double LongestStepSeconds = 0.01;

    /// <summary>Air at the vents, Pa.</summary>
    public const double AmbientPascals = 101_325;

    private const double SteepestSlope = 1;

    /// <summary>How the air spaces breathe.</summary>
    public TankVents Vents { get; init; }

    /// <summary>The fuel.</summary>
    public CarriedFuel Fuel { get; init; } = CarriedFuel.Petrol;

    /// <summary>What is drawn and returned; null: the engine is off.</summary>
    public FuelDraw? Draw { get; init; }

    /// <summary>The sender.</summary>
    public required TankSender Sender { get; init; }

    /// <summary>A second sender whose resistance counts half, as the first's then does; null: none.</summary>
    public TankSender? SecondSender { get; init; }

    /// <summary>The gauge.</summary>
    public required FuelGauge Gauge { get; init; }

    /// <summary>Longest step of the march, s; above zero.</summary>
    public double StepSeconds { get; init; } = LongestStepSeconds;

    /// <summary>Marches a drive.</summary>
    /// <param name="trace">The road.</param>
    /// <param name="start">Fuel in the left and the right tank, m³; not below zero.</param>
    /// <param name="everySeconds">How often a moment is kept, s; rounded to whole samples of the trace.</param>
    /// <param name="needle">Where the needle stands at the beginning; null: at rest.</param>
    /// <returns>The drive.</returns>
    public SendingRun Run(RoadTrace trace, (double Left, double Right) start, double everySeconds, double? needle = null)
    {
        Precondition.NotNegative(start.Left);
        Precondition.NotNegative(start.Right);
        var every = Math.Max(1, (int)Math.Round(Precondition.Positive(everySeconds) / trace.StepSeconds));
        var readings = trace.Readings;
        var steps = (int)Math.Ceiling(trace.StepSeconds / StepSeconds * (1 - 1e-9));
        var march = new TwoTankMarch(this, readings[0], start, trace.StepSeconds / steps, needle);
        var moments = new SendingMoment[(readings.Length - 1) / every + 1];
        moments[0] = march.Moment(0, readings[0]);
        for (var k = 1; k < readings.Length; k++)
        {
            march.Over(readings[k - 1], readings[k], steps);
            if (k % every == 0)
            {
                moments[k / every] = march.Moment(k * trace.StepSeconds, readings[k]);
            }
        }

        return new SendingRun(moments, Validity.Of("slope of the surface", march.Steepest, (0, SteepestSlope)), march.DrySeconds);
    }

    /// <summary>How long both surfaces need to come level on a standing car with the engine off.</summary>
    /// <param name="start">Fuel in the left and the right tank, m³.</param>
    /// <param name="withinMetres">Difference at which they count as level, m; above zero.</param>
    /// <param name="limitSeconds">When to give up, s.</param>
    /// <returns>s; null where they are not level by then, as with a blocked vent.</returns>
    public double? SecondsToLevel((double Left, double Right) start, double withinMetres, double limitSeconds = 4 * 3600)
    {
        Precondition.Positive(withinMetres);
        var still = this with { Draw = null };
        var march = new TwoTankMarch(still, RoadSample.Level, start, StepSeconds, null);
        var steps = (int)(limitSeconds / StepSeconds);
        for (var k = 0; k <= steps; k++)
        {
            if (Math.Abs(Left.FloorMetres + Left.Table.LevelOf(march.LeftVolume) - Right.FloorMetres - Right.Table.LevelOf(march.RightVolume)) <= withinMetres)
            {
                return k * StepSeconds;
            }

            march.Over(RoadSample.Level, RoadSample.Level, 1);
        }

        return null;
    }

    /// <summary>How a total settles over both tanks, standing level with free vents.</summary>
    /// <param name="totalCubicMetres">Fuel in both, m³; not below zero.</param>
    /// <returns>Left and right, m³.</returns>
    public (double Left, double Right) Settled(double totalCubicMetres)
    {
        Precondition.NotNegative(totalCubicMetres);
        var (low, high) = (Math.Max(0, totalCubicMetres - Right.Table.CapacityCubicMetres), Math.Min(totalCubicMetres, Left.Table.CapacityCubicMetres));
        for (var k = 0; k < 60 && high > low; k++)
        {
            var left = 0.5 * (low + high);
            var higher = Left.FloorMetres + Left.Table.LevelOf(left) > Right.FloorMetres + Right.Table.LevelOf(totalCubicMetres - left);
            (low, high) = higher ? (low, left) : (left, high);
        }

        return (0.5 * (low + high), totalCubicMetres - 0.5 * (low + high));
    }

    /// <summary>Where the needle comes to rest with a total that has settled, standing level.</summary>
    /// <param name="totalCubicMetres">Fuel in both tanks, m³.</param>
    /// <returns>0 at E, 1 at F.</returns>
    public double NeedleAtRest(double totalCubicMetres) =>
        new TwoTankMarch(this, RoadSample.Level, Settled(totalCubicMetres), StepSeconds, null).Needle;
}
