namespace Tickover.Cli.Json;

/// <summary>From the cylinders to the λ shown.</summary>
/// <param name="Found">Whether the log told; else it is the usual one.</param>
/// <param name="FixedSeconds">Fixed part, s.</param>
/// <param name="PipeKilograms">Mass of gas in the pipe, kg.</param>
/// <param name="SlowSeconds">Delay at little flow, s.</param>
/// <param name="SlowSigma">What that may be off by, s.</param>
/// <param name="FastSeconds">Delay at much flow, s.</param>
/// <param name="FastSigma">What that may be off by, s.</param>
internal sealed record LoggedDelay(
    bool Found, double FixedSeconds, double PipeKilograms, double SlowSeconds, double SlowSigma, double FastSeconds, double FastSigma);
