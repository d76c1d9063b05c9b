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
        var amount = adjuster.StepsATurn == 6
            ? steps == 1 ? "1 flat" : string.Create(CultureInfo.InvariantCulture, $"{steps} flats")
            : string.Create(CultureInfo.InvariantCulture, $"{steps}/{adjuster.StepsATurn} turn");
        return $"{adjuster.Where}, {adjuster.Thing}: {amount} {(turns > 0 ? adjuster.More : adjuster.Less)}.";
    }
}
