using System.Globalization;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Balance.Recorded;

namespace Tickover.Workshop.Balance.Advising;

/// <summary>Turns and acts as they are said aloud.</summary>
public static class MoveWords
{
    private static readonly string[] Eighths = ["", "one eighth", "a quarter", "three eighths", "half a turn", "five eighths", "three quarters", "seven eighths"];
    private static readonly string[] Signs = ["", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"];
    private const int FlatsATurn = 6;
    private static readonly string[] Numbers = ["no", "one", "two", "three", "four", "five"];

    /// <summary>How far, as a person turns it.</summary>
    /// <param name="adjuster">What is turned.</param>
    /// <param name="turns">Turns; the sign does not matter.</param>
    /// <returns>Such as "one eighth", "1 turn and a quarter", "two flats".</returns>
    public static string HowFar(Adjuster adjuster, double turns)
    {
        ArgumentNullException.ThrowIfNull(adjuster);
        var steps = (int)Math.Round(Math.Abs(turns) * adjuster.StepsATurn);
        var (whole, rest) = (steps / adjuster.StepsATurn, steps % adjuster.StepsATurn);
        if (adjuster.StepsATurn != Eighths.Length)
        {
            return rest == 0 && whole > 0 ? Whole(whole) : Flats(steps * FlatsATurn / (double)adjuster.StepsATurn);
        }

        return (whole, rest) switch
        {
            (0, 0) => "less than an eighth",
            (0, _) => Eighths[rest],
            (_, 0) => Whole(whole),
            _ => $"{Whole(whole)} and {(rest == 4 ? "a half" : Eighths[rest])}",
        };
    }

    /// <summary>How far in signs, such as "⅛", "1¼" or "2 flats".</summary>
    /// <param name="adjuster">What is turned.</param>
    /// <param name="turns">Turns; the sign does not matter.</param>
    /// <returns>The text.</returns>
    public static string Short(Adjuster adjuster, double turns)
    {
        ArgumentNullException.ThrowIfNull(adjuster);
        var steps = (int)Math.Round(Math.Abs(turns) * adjuster.StepsATurn);
        if (adjuster.StepsATurn != Signs.Length)
        {
            var flats = steps * FlatsATurn / (double)adjuster.StepsATurn;
            var half = flats % 1 > 0 ? "½" : "";
            return string.Create(CultureInfo.InvariantCulture, $"{(flats >= 1 ? Math.Floor(flats).ToString(CultureInfo.InvariantCulture) : "")}{half} {(flats > 1 ? "flats" : "flat")}");
        }

        var (whole, rest) = (steps / Signs.Length, steps % Signs.Length);
        return (whole > 0 || rest == 0 ? whole.ToString(CultureInfo.InvariantCulture) : "") + Signs[rest];
    }

    /// <summary>What was done between rounds.</summary>
    /// <param name="step">The step.</param>
    /// <param name="plan">The engine.</param>
    /// <returns>Such as "Carburettor 2, stop screw: in ⅛"; empty for a round or something looked at.</returns>
    public static string Of(BalanceStep step, EnginePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return step switch
        {
            Turned turned when plan.Find(turned.Adjuster) is { } adjuster => $"{adjuster.Where}, {adjuster.Thing}: {Way(adjuster, turned.Turns)} {Short(adjuster, turned.Turns)}",
            Turned turned => $"{turned.Adjuster}: no such screw on this engine",
            RodsTakenOff => "Rods off",
            RodsPutBack => "Rods back on",
            CheckedFor { Found: true } check => $"Put right: {PlanWords.Fault(check.Fault, plan)}",
            _ => "",
        };
    }

    /// <summary>The way round.</summary>
    /// <param name="adjuster">What is turned.</param>
    /// <param name="turns">Turns, positive opens.</param>
    /// <returns>Such as "in" or "shorter".</returns>
    public static string Way(Adjuster adjuster, double turns)
    {
        ArgumentNullException.ThrowIfNull(adjuster);
        return turns >= 0 ? adjuster.More : adjuster.Less;
    }

    private static string Whole(int turns) => turns == 1 ? "1 turn" : string.Create(CultureInfo.InvariantCulture, $"{turns} turns");

    private static string Flats(double flats)
    {
        var (whole, half) = ((int)flats, flats % 1 > 0);
        var count = whole < Numbers.Length ? Numbers[whole] : whole.ToString(CultureInfo.InvariantCulture);
        return (whole, half) switch
        {
            (0, true) => "half a flat",
            (1, false) => "one flat",
            (_, true) => $"{count} and a half flats",
            _ => $"{count} flats",
        };
    }
}
