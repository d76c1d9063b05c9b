namespace Tickover.Cli.Json;

/// <summary>The mixture over one steady stretch.</summary>
/// <param name="Bank">Bank from 1, or null.</param>
/// <param name="Regime">What the engine did.</param>
/// <param name="SpeedRpm">Speed, rpm.</param>
/// <param name="ThrottleDegrees">Opening from seated, degrees, or null.</param>
/// <param name="ManifoldPascals">Absolute pressure behind the plates, Pa, or null.</param>
/// <param name="Lambda">Mean λ.</param>
/// <param name="LambdaSigma">Its standard error with the share of the sensor, 1.</param>
/// <param name="Count">Samples averaged.</param>
/// <param name="StartSeconds">Start, s.</param>
/// <param name="Seconds">Length, s.</param>
/// <param name="Doubts">Why it should not decide alone.</param>
internal sealed record LoggedPoint(
    int? Bank, string Regime, double SpeedRpm, double? ThrottleDegrees, double? ManifoldPascals, double Lambda, double LambdaSigma, int Count,
    double StartSeconds, double Seconds, IReadOnlyList<string> Doubts);
