using System.Globalization;
using System.Text;
using Tickover.Workshop.Balance;

namespace Tickover.Practice.Talk;

/// <summary>The practice engine in words: a line said, a few lines answered.</summary>
/// <param name="engine">The engine.</param>
/// <param name="advise">Lines that say what to do next, given elsewhere, because the engine knows nothing of advice; null where none is given.</param>
public sealed class PracticeTalk(PracticeEngine engine, Func<string>? advise = null)
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    /// <summary>What is said first.</summary>
    /// <returns>Lines.</returns>
    public string Greeting() =>
        $"{engine.Plan.Name}: {engine.Plan.Carburettors.Count} carburettors, {engine.Plan.Barrels.Count} barrels, running at idle. Nothing here is a real engine; at one, hands, hair and sleeves stay clear of belts and fan, and the exhaust is led out of doors.{Environment.NewLine}help shows what can be said.{Environment.NewLine}";

    /// <summary>Answers a line.</summary>
    /// <param name="line">What was said.</param>
    /// <returns>Lines.</returns>
    public string Answer(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        switch (line.Trim().ToUpperInvariant())
        {
            case "HELP":
                return Lines(WordActs.Help);
            case "ADVICE":
                return advise?.Invoke() ?? Lines(["No advice is given here."]);
            case "LIST":
                return Lines(engine.Plan.Adjusters.Select(a => $"{a.Key.Replace(':', ' '),-12}{a.Where}, {a.Thing}: {a.More} or {a.Less}, {a.TravelTurns.ToString("0.#", Plain)} turns"));
        }

        var asked = WordActs.Read(line);
        return asked.Do is { } act ? Text(act(engine)) : asked.Complaint + Environment.NewLine;
    }

    private string Text(PracticeAnswer answer)
    {
        var lines = new List<string> { answer.Words };
        switch (answer)
        {
            case { Reading: { } reading }:
                lines[0] = Reading(reading);
                break;
            case { Step: RoundRead read }:
                lines.AddRange(Round(read.Round));
                break;
            case { Score: { } score }:
                lines.AddRange(Score(score));
                break;
        }

        return Lines(lines);
    }

    private static IEnumerable<string> Round(BalanceRound round)
    {
        foreach (var reading in round.Readings)
        {
            yield return Reading(reading);
        }

        if (round.Again is not { } again)
        {
            yield break;
        }

        yield return Reading(again) + ", read again";
        if (round.Readings.All(r => r.Air is not null))
        {
            var air = round.Readings.Select(r => r.Air!.Value).ToList();
            yield return string.Create(Plain, $"Mean {air.Average():0.00} kg/h, spread {air.Max() - air.Min():0.0} kg/h; oil {round.OilCelsius:0} °C.");
        }
    }

    private static string Reading(BarrelReading reading)
    {
        var text = new StringBuilder(string.Create(Plain, $"Barrel {reading.Barrel}:"));
        Add(text, reading.Air, "0.0", " kg/h");
        Add(text, reading.Vacuum, "0.0", " kPa");
        Add(text, reading.Lambda, "0.00", " lambda");
        Add(text, reading.Header, "0", " °C");
        Add(text, reading.Rpm, "0", " rpm");
        return text.ToString().TrimEnd(',');
    }

    private static void Add(StringBuilder text, double? figure, string format, string unit)
    {
        if (figure is { } value)
        {
            text.Append(' ').Append(value.ToString(format, Plain)).Append(unit).Append(',');
        }
    }

    private IEnumerable<string> Score(PracticeScore score)
    {
        yield return string.Create(Plain, $"{Count(score.Moves, "move")}, {Count(score.Rounds, "round")}, {Count(score.SingleReadings, "single reading")}, {score.Minutes:0} minutes.");
        yield return string.Create(Plain, $"Idle {score.IdleRpm:0} rpm: spread {score.IdleSpread:0.00} kg/h, worst barrel {100 * score.IdleWorst:0.0} % off the mean, {Within(score.IdleWithin)}.");
        yield return string.Create(Plain, $"Off idle: worst barrel {100 * score.RaisedWorst:0.0} % off the mean, {Within(score.RaisedWithin)}.");
        foreach (var fault in engine.Truth().Faults)
        {
            yield return $"Hidden: {fault.Place}, {fault.Size}; {(fault.Mended ? "found and mended" : "not found")}.";
        }
    }

    private static string Count(int count, string what) => string.Create(Plain, $"{count} {what}{(count == 1 ? "" : "s")}");

    private static string Within(bool within) => within ? "within limits" : "out of limits";

    private static string Lines(IEnumerable<string> lines) => string.Concat(lines.Select(l => l + Environment.NewLine));
}
