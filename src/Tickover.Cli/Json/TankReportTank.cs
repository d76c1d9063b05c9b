namespace Tickover.Cli.Json;

/// <summary>One tank in a <see cref="TankReport"/>.</summary>
/// <param name="Name">Its name.</param>
/// <param name="CapacityLitres">What it holds to the brim.</param>
/// <param name="WallSquareMetres">Its wall inside.</param>
internal sealed record TankReportTank(string Name, double CapacityLitres, double WallSquareMetres);
