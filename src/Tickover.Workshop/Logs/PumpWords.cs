using System.Globalization;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Logs;

/// <summary>What the fast openings of a log say together of the accelerator pump.</summary>
internal static class PumpWords
{
    private const string Drive =
        "What would show it: engine warm, a steady 1,500 to 2,000 rpm in a high gear, λ about as rich as when driving on; then the throttle open by half and more within half a second, "
        + "and held for three seconds. Three times, logged ten times a second or faster, with a second person at the instruments, on a rolling road or where the law of the place and the traffic allow it.";

    private const int Enough = 3;                        // openings judged
    private const double Before = 6;                     // s before an opening in which nothing should move, but for
    private const double Opening = 0.3;                  // s of the opening itself
    private const double Still = 3;                      // degrees
    private const double HundredthsPerMetre = 1e5;
    private const double GasConstant = 287.05;           // J/(kg K), dry air

    /// <summary>Judges every opening, and all of them together.</summary>
    internal static LogPump Of(LogView view, IReadOnlyList<LogTipIn> openings)
    {
        var shots = openings.Select(o => Shot(view, o)).ToArray();
        var judged = shots.Where(s => s.Verdict is not (TipInVerdict.CannotTell or TipInVerdict.SlowOpening)).ToArray();
        if (judged.Length == 0)
        {
            return new LogPump { Shots = shots, Words = Nothing(view, shots), Advice = [Drive] };
        }

        var groups = judged.GroupBy(s => s.Verdict).OrderByDescending(g => g.Count()).ToArray();
        var first = groups[0];
        return 2 * first.Count() > judged.Length
            ? new LogPump { Shots = shots, Verdict = first.Key, Words = Together(first, judged, shots), Advice = Openings(judged) < Enough ? [.. first.First().Advice, Drive] : first.First().Advice }
            : new LogPump
            {
                Shots = shots,
                Words = $"The fast openings do not agree: {string.Join(", ", groups.Select(g => string.Create(CultureInfo.InvariantCulture, $"{g.Count()} × {Say(g.Key)}")))}.",
                Advice = ["Change nothing yet. Repeat the opening three times from the same speed and gear; two of three decide.", Drive],
            };
    }

    private static LogShot Shot(LogView view, LogTipIn opening)
    {
        var at = (int)Math.Round(opening.StartSeconds / view.Grid.Step);
        if (view.IsCold(Math.Clamp(at, 0, view.Grid.Count - 1)))
        {
            return new LogShot(Math.Round(opening.StartSeconds, 1), opening.Bank, TipInVerdict.CannotTell, "The engine was cold: cold walls hold back fuel whatever the pump gives.", [], []);
        }

        var judgement = TipInJudgement.Of(opening.Trace, Engine(view.Car, opening.Bank));
        if (judgement.Verdict is TipInVerdict.CannotTell && judgement.LambdaBefore is null && Moved(view, at))
        {
            const string words = "It came before λ had settled from the lift or the overrun before it: drive on light throttle for three seconds first.";
            return new LogShot(Math.Round(opening.StartSeconds, 1), opening.Bank, TipInVerdict.CannotTell, words, [], []);
        }

        return new LogShot(Math.Round(opening.StartSeconds, 1), opening.Bank, judgement.Verdict, judgement.Words, judgement.Advice, judgement.Open);
    }

    // Whether the throttle was moved in the seconds before the opening, other than by the opening itself.
    private static bool Moved(LogView view, int at)
    {
        var degrees = view.Marks.Degrees!;
        var (from, to) = (Math.Max(0, at - (int)(Before / view.Grid.Step)), Math.Max(0, at - (int)(Opening / view.Grid.Step)));
        var before = degrees[from..Math.Max(from, to)].Where(double.IsFinite).ToArray();
        return before.Length > 0 && before.Max() - before.Min() > Still;
    }

    /// <summary>The engine before a probe, from the car's document.</summary>
    internal static TipInEngine Engine(Car car, int? bank)
    {
        var bore = car.Engine.Si("engine.bore");
        var swept = Math.PI / 4 * bore * bore * car.Engine.Si("engine.stroke") * 1000;
        var banked = bank is { } b && car.Banks.Contains(b) && car.Banks.Max() > 1;
        var cylinders = banked ? car.Banks.Count(c => c == bank) : car.CylinderCount;
        var jet = car.Barrels[0].Figures.Si("barrel.pumpJet") * HundredthsPerMetre;
        return new TipInEngine
        {
            SweptLitres = swept * cylinders,
            Barrels = Math.Max(1, (int)Math.Round(car.Barrels.Count * (double)cylinders / car.CylinderCount)),
            AirDensity = car.Ambient.Si("ambient.pressure") / GasConstant / car.Ambient.Si("ambient.temperature"),
            PumpJet = jet > 0 ? jet : null,
        };
    }

    private static string Nothing(LogView view, LogShot[] shots) =>
        view.Marks.Degrees is null ? "Without a throttle in the log no fast opening can be seen, so it says nothing of the accelerator pump."
        : shots.Length == 0 ? "There is no fast opening in this log, so it says nothing of the accelerator pump."
        : $"The fast openings in this log cannot be judged. {string.Join(" ", shots.Select(s => s.Words).Distinct(StringComparer.Ordinal).Take(2))}";

    // Openings are counted, not what each bank's probe says of them.
    private static string Together(IGrouping<TipInVerdict, LogShot> most, LogShot[] judged, LogShot[] shots)
    {
        var (clear, all) = (Openings(judged), Openings(shots));
        var agree = most.Count() == judged.Length ? clear == 1 ? string.Empty : " and agree" : string.Create(CultureInfo.InvariantCulture, $", {Openings(most)} alike");
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{clear} of {all} fast openings can be judged{agree}: the accelerator pump's shot is {Say(most.Key)}.{(clear == 1 ? " One is a hint; two of three decide." : string.Empty)}");
    }

    private static int Openings(IEnumerable<LogShot> shots) => shots.Select(s => s.StartSeconds).Distinct().Count();

    private static string Say(TipInVerdict verdict) => verdict switch
    {
        TipInVerdict.Right => "right",
        TipInVerdict.TooSmall => "too small",
        TipInVerdict.TooLarge => "too large",
        TipInVerdict.Late => "late",
        TipInVerdict.SpentTooSoon => "spent too soon",
        _ => "not to be told",
    };
}
