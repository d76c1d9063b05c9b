namespace Tickover.Cli.Json;

/// <summary>Barrels that give the same mixture.</summary>
/// <param name="Numbers">Their numbers.</param>
/// <param name="Points">Every point, speed by speed.</param>
internal sealed record MixtureBarrels(IReadOnlyList<int> Numbers, IReadOnlyList<MixturePoint> Points);
