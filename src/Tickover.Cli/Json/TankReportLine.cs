namespace Tickover.Cli.Json;

/// <summary>One line of the strapping table in a <see cref="TankReport"/>.</summary>
/// <param name="Litres">Fuel in all tanks.</param>
/// <param name="TankLitres">Fuel in each.</param>
/// <param name="DipMillimetres">Dip of each.</param>
/// <param name="Ohms">Of the sender; null where nothing tells it.</param>
/// <param name="Needle">0 at E, 1 at F; null where nothing tells it.</param>
internal sealed record TankReportLine(double Litres, IReadOnlyList<double> TankLitres, IReadOnlyList<double> DipMillimetres, double? Ohms, double? Needle);
