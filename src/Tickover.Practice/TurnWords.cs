using System.Globalization;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Practice;

/// <summary>A turn as a person says it.</summary>
internal static class TurnWords
{
    /// <summary>Such as "Carburettor 2, stop screw: 1/8 turn in.".</summary>
    public static string Of(Adjuster adjuster, double turns)
    {
        var steps = (int)Math.Round(Math.Abs(turns) * adjuster.StepsATurn);
        var flats = steps * 6.0 / adjuster.StepsATurn;
        var amount = adjuster.StepsATurn % 6 == 0
            ? string.Create(CultureInfo.InvariantCulture, $"{flats} {(flats > 1 ? "flats" : "flat")}")
            : string.Create(CultureInfo.InvariantCulture, $"{steps}/{adjuster.StepsATurn} turn");
        return $"{adjuster.Where}, {adjuster.Thing}: {amount} {(turns > 0 ? adjuster.More : adjuster.Less)}.";
    }
}
