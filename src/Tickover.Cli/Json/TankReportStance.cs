namespace Tickover.Cli.Json;

/// <summary>One way of standing in a <see cref="TankReport"/>.</summary>
/// <param name="Name">In words.</param>
/// <param name="UnusableLitres">Fuel in all tanks when the pick-up draws air; null without a pick-up.</param>
/// <param name="NeedleThen">Where the needle settles then; null where nothing tells it.</param>
internal sealed record TankReportStance(string Name, double? UnusableLitres, double? NeedleThen);
