namespace Tickover.Workshop.Linkages.Parts;

/// <summary>The screw of a coupling between spindles, set by eighths of a turn.</summary>
/// <param name="PitchMillimetres">Pitch of its thread, mm.</param>
/// <param name="ArmMillimetres">From the spindle's centre to where the screw bears, mm.</param>
public sealed record CouplingScrew(double PitchMillimetres, double ArmMillimetres)
{
    /// <summary>Smallest part of a turn it is set by.</summary>
    public const double StepTurns = 0.125;

    /// <summary>How far a turn turns the driven spindle, degrees.</summary>
    public double DegreesPerTurn => double.RadiansToDegrees(Math.Atan(PitchMillimetres / ArmMillimetres));
}
