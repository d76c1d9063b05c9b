namespace Tickover.Workshop.Balance;

/// <summary>What a barrel is expected to read after a move, with its 90 % band; kg/h.</summary>
/// <param name="Barrel">Its number.</param>
/// <param name="Now">What it reads now.</param>
/// <param name="Then">What it should read.</param>
/// <param name="Low">Lower end of the band.</param>
/// <param name="High">Upper end of the band.</param>
public sealed record ExpectedReading(int Barrel, double Now, double Then, double Low, double High);
