namespace Tickover.Cli.Json;

/// <summary>What a barrel should read after a move, kg/h.</summary>
/// <param name="Barrel">Its number.</param>
/// <param name="Now">Now.</param>
/// <param name="Then">Then.</param>
/// <param name="Low">Lower end of the 90 % band.</param>
/// <param name="High">Upper end of the 90 % band.</param>
internal sealed record BalanceExpected(int Barrel, double Now, double Then, double Low, double High);
