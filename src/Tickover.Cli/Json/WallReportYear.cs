namespace Tickover.Cli.Json;

/// <summary>Chance of a hole so many years on, in a <see cref="WallReport"/>.</summary>
/// <param name="Years">From now.</param>
/// <param name="Low">Slow growth, lucky.</param>
/// <param name="Middle">Between.</param>
/// <param name="High">Fast growth, unlucky.</param>
internal sealed record WallReportYear(double Years, double Low, double Middle, double High);
