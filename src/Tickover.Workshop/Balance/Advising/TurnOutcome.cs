using Tickover.Workshop.Balance.Plans;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>A turn and what came of it.</summary>
/// <param name="Adjuster">What was turned.</param>
/// <param name="Turns">By how much.</param>
/// <param name="RodsOff">Whether the rods were off.</param>
/// <param name="Expected">Change of its barrels' air that was expected, kg/h.</param>
/// <param name="Got">Change found, kg/h.</param>
/// <param name="Deviation">What the found change is good to (one standard deviation), kg/h.</param>
internal sealed record TurnOutcome(Adjuster Adjuster, double Turns, bool RodsOff, double Expected, double Got, double Deviation)
{
    /// <summary>Whether it surely did hardly anything of what it should have.</summary>
    public bool DidNothing => Math.Abs(Expected) > 3 * Deviation && Math.Abs(Got) < Math.Min(0.3 * Math.Abs(Expected), 2 * Deviation);
}
