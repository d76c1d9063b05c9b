using Tickover.Workshop.Calibration;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Fits;

/// <summary>How far one reading lies off the fit, and how far it may.</summary>
internal sealed class Residual(FittedPoint point, double fieldDeviation)
{
    /// <summary>Measured less fitted λ; leaner than fitted is above zero.</summary>
    internal double Off { get; } = point.Point.Lambda - point.FittedLambda;

    /// <summary>Half of the 90 % band: what the model leaves over and the error of the reading itself, together.</summary>
    internal double Half { get; } = Normal.Ninety * Math.Sqrt(Math.Pow(fieldDeviation * point.FittedLambda, 2) + Math.Pow(point.Point.LambdaSigma, 2));

    internal bool IsOutside => Math.Abs(Off) > Half;

    internal double SpeedRpm => point.Point.SpeedRpm;

    internal double Degrees => point.ThrottleDegrees;

    /// <summary>Bank from 1; 0 where one probe sees all.</summary>
    internal int Bank => point.Point.Bank ?? 0;

    internal string Regime => MixtureTargets.At(point.ThrottleDegrees).Regime;
}
