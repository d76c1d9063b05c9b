namespace Tickover.Physics.Sending;

/// <summary>First sloshing mode of a tank in one direction, as what it adds to the surface at rest under the same acceleration. docs/physics/sending.md (10) to (13).</summary>
/// <remarks>Marched without error for an acceleration that goes straight from sample to sample.</remarks>
public struct SloshMode
{
    /// <summary>Depth below which the mode keeps its frequency, m; there is no wave in a film of fuel.</summary>
    public const double LeastDepthMetres = 0.005;

    private readonly double _span;
    private readonly double _damping;
    private readonly double _step;
    private readonly double _push;
    private double _lag;
    private double _c11;
    private double _c12;
    private double _c21;
    private double _c22;
    private double _height;
    private double _speed;

    /// <summary>The mode at rest.</summary>
    /// <param name="spanMetres">Inside of the tank in the direction it sloshes, m; above zero.</param>
    /// <param name="damping">Share of critical; above 0 and below 1.</param>
    /// <param name="stepSeconds">Step it is marched by, s; above zero.</param>
    public SloshMode(double spanMetres, double damping, double stepSeconds)
    {
        _span = Precondition.Positive(spanMetres);
        _damping = Precondition.Within(damping, 0, 1 - 1e-9);
        _step = Precondition.Positive(stepSeconds);
        _push = -Share(spanMetres) / stepSeconds;
    }

    /// <summary>Height of the mode at the wall over the surface at rest, m.</summary>
    public readonly double HeightMetres => _height;

    /// <summary>Angular frequency of the mode m, n in a rectangular tank.</summary>
    /// <param name="spanMetres">Side along which it sloshes, m.</param>
    /// <param name="depthMetres">Depth of the fuel, m.</param>
    /// <param name="gravity">Pull towards the floor, m/s².</param>
    /// <returns>rad/s.</returns>
    public static double Frequency(double spanMetres, double depthMetres, double gravity)
    {
        var k = Math.PI / spanMetres;
        return Math.Sqrt(gravity * k * Math.Tanh(k * depthMetres)); // sending (10)
    }

    /// <summary>What a slope of the surface at rest is worth in the mode, m for a slope of 1.</summary>
    /// <param name="spanMetres">Side along which it sloshes, m.</param>
    /// <returns>m.</returns>
    public static double Share(double spanMetres) => 4 * spanMetres / (Math.PI * Math.PI); // sending (11)

    /// <summary>Sets the frequency by the depth.</summary>
    /// <param name="depthMetres">Depth of the fuel, m.</param>
    /// <param name="gravity">Pull towards the floor, m/s².</param>
    public void Tune(double depthMetres, double gravity)
    {
        var omega = Frequency(_span, Math.Max(LeastDepthMetres, depthMetres), gravity);
        var damped = omega * Math.Sqrt(1 - _damping * _damping);
        var fade = Math.Exp(-_damping * omega * _step);
        var (sine, cosine) = Math.SinCos(damped * _step);
        var skew = _damping * omega / damped * sine;
        _c11 = fade * (cosine + skew);
        _c12 = fade * sine / damped;
        _c21 = -omega * omega * _c12;
        _c22 = fade * (cosine - skew);
        _lag = 2 * _damping / omega;
    }

    /// <summary>One step, in which the slope of the surface at rest changes.</summary>
    /// <param name="slopeChange">By how much the acceleration over the pull rises in the step.</param>
    public void Step(double slopeChange)
    {
        var rate = _push * slopeChange; // sending (12)
        var above = _height + _lag * rate;
        var speed = _speed - rate;
        _height = _c11 * above + _c12 * speed - _lag * rate; // sending (13)
        _speed = _c21 * above + _c22 * speed + rate;
    }
}
