namespace Tickover.Workshop.StripDown.Build;

/// <summary>What to set on the bench.</summary>
/// <param name="PlateDegrees">Plates off their seats, degrees.</param>
/// <param name="RodMillimetres">Feeler or drill that just passes between the plate's edge and the bore, mm.</param>
/// <param name="ScrewTurns">Mixture screws out, turns; null where no setting gives the mixture wanted.</param>
/// <param name="Settings">All of it in the order of the work.</param>
/// <param name="Rods">The rods.</param>
/// <param name="Verdict">In a line.</param>
public sealed record BuildAnswer(double PlateDegrees, double RodMillimetres, double? ScrewTurns, IReadOnlyList<BuildSetting> Settings, IReadOnlyList<BuildRodVerdict> Rods, string Verdict)
{
    /// <summary>Whether something must not stay as it is.</summary>
    public bool IsNo => Rods.Any(r => r.IsOutside) || ScrewTurns is null;
}
