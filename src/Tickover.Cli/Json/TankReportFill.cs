namespace Tickover.Cli.Json;

/// <summary>A fill against the shape in a <see cref="TankReport"/>.</summary>
/// <param name="Verdict">Agree, AgreeSetRight or Differ.</param>
/// <param name="Misfit">Dips read less fitted, in reading errors.</param>
/// <param name="Steps">Step by step.</param>
internal sealed record TankReportFill(string Verdict, double Misfit, IReadOnlyList<TankReportStep> Steps);
