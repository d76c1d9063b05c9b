using System.Globalization;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Practice.Virtual;

/// <summary>Why nothing can be read.</summary>
internal static class Refusal
{
    private const double LeastOfIdle = 1.2;
    private const double MostRpm = 4000;

    /// <summary>Why a speed cannot be held; null where it can be tried.</summary>
    public static string? OfHeld(EnginePlan plan, double? heldRpm, bool rodsOff)
    {
        if (heldRpm is null)
        {
            return null;
        }

        if (!(heldRpm >= plan.IdleRpm * LeastOfIdle && heldRpm <= MostRpm))
        {
            return string.Create(CultureInfo.InvariantCulture, $"{heldRpm} rpm cannot be held: from {plan.IdleRpm * LeastOfIdle:0} to {MostRpm:0} rpm.");
        }

        return rodsOff ? "With the rods off nothing raises all carburettors alike. Put the rods back first." : null;
    }

    /// <summary>That the engine does not run so.</summary>
    public static string Stalls(double? heldRpm) => heldRpm is null
        ? "The engine does not keep running at idle. Open the stops a little."
        : string.Create(CultureInfo.InvariantCulture, $"The engine cannot be held at {heldRpm:0} rpm: it idles faster, or does not reach it.");
}
