using System.Globalization;
using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Cli.Output;

/// <summary>What is advised, as it is said to the practice engine.</summary>
internal static class PracticeWords
{
    private const int Flats = 6;
    private static readonly CultureInfo C = CultureInfo.InvariantCulture;

    /// <summary>The act of a move.</summary>
    /// <param name="next">The move.</param>
    /// <returns>Such as "turn stop 2 in 1/8".</returns>
    public static string Of(NextMove next) => next.Kind switch
    {
        NextKind.Turn => $"turn {Key(next.Adjuster!)} {Way(next)}",
        NextKind.RodsOff => "rods off",
        NextKind.RodsOn => "rods on",
        NextKind.OfferRod => $"offer {Key(next.Adjuster!)}",
        NextKind.Look => $"look {Key(next.Adjuster!)}",
        NextKind.Repair => $"name {next.Fault}",
        NextKind.Done => "finish",
        _ => Read(next),
    };

    private static string Read(NextMove next)
    {
        var kinds = string.Concat(Enum.GetValues<ReadKinds>().Where(k => k is not (ReadKinds.None or ReadKinds.Air) && next.Read.HasFlag(k)).Select(k => $" {k.ToString().ToLowerInvariant()}"));
        var air = kinds.Length > 0 && next.Read.HasFlag(ReadKinds.Air) ? " air" : "";
        return next.Barrels.Count > 0
            ? $"read barrel {string.Join(' ', next.Barrels)}{(next.HeldRpm is { } at ? $" at {at.ToString("0", C)}" : "")}{air}{kinds}"
            : $"read {next.HeldRpm?.ToString("0", C) ?? "idle"}{air}{kinds}";
    }

    private static string Way(NextMove next)
    {
        var (adjuster, turns) = (next.Adjuster!, Math.Abs(next.Turns));
        var steps = Math.Round(turns * adjuster.StepsATurn);
        var flats = steps * Flats / adjuster.StepsATurn;
        var far = adjuster.StepsATurn % Flats == 0 ? $"{flats.ToString(C)} {(flats > 1 ? "flats" : "flat")}" : $"{steps.ToString(C)}/{adjuster.StepsATurn.ToString(C)}";
        return $"{(next.Turns > 0 ? adjuster.More : adjuster.Less)} {far}";
    }

    private static string Key(Adjuster adjuster) => adjuster.Key.Replace(':', ' ');
}
