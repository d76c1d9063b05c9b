namespace Tickover.Workshop.Linkages.Parts;

/// <summary>How a rod's length is set.</summary>
/// <param name="PitchMillimetres">Pitch of its thread, mm.</param>
/// <param name="IsTurnbuckle">Whether it has a right-hand and a left-hand thread, so that a turn counts twice.</param>
/// <param name="StepTurns">Smallest part of a turn it can be set by; half a turn where a ball socket has to come round again.</param>
public sealed record RodThread(double PitchMillimetres, bool IsTurnbuckle, double StepTurns)
{
    /// <summary>Change of length for one turn, mm.</summary>
    public double MillimetresPerTurn => IsTurnbuckle ? 2 * PitchMillimetres : PitchMillimetres;
}
