namespace Tickover.Cli.Json;

/// <summary>A visit that is open.</summary>
/// <param name="Number">Its number on papers.</param>
/// <param name="Car">The car as people call it.</param>
/// <param name="Stage">The stage in hand.</param>
/// <param name="ArrivedOn">The day the car came.</param>
internal sealed record OpenVisitLine(int Number, string Car, string Stage, DateOnly ArrivedOn);
