namespace Tickover.Workshop.StripDown.Levels;

/// <summary>What a sheet of levels comes to.</summary>
/// <param name="Carburettors">Each in its order.</param>
/// <param name="Target">Level the set is held against, mm below the lid.</param>
/// <param name="Spread">Highest from lowest, mm; null where fewer than two can be told.</param>
/// <param name="Mixture">What a millimetre more does.</param>
/// <param name="Verdict">In a line.</param>
public sealed record LevelAnswer(IReadOnlyList<LevelVerdict> Carburettors, double Target, double? Spread, IReadOnlyList<LevelMixture> Mixture, string Verdict)
{
    /// <summary>Whether something must be done.</summary>
    public bool IsNo => Carburettors.Any(c => c.IsNo);
}
