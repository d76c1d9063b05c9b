using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Practice.Talk;

/// <summary>The practice engine by lines of JSON: an act in, an answer out; docs/practice.md and docs/schemas/practice.schema.json.</summary>
/// <param name="engine">The engine.</param>
/// <param name="advise">Answers <c>{"advise":true}</c> by one line of JSON, given elsewhere, because the engine knows nothing of advice; null where none is given.</param>
public sealed class PracticeProtocol(PracticeEngine engine, Func<string>? advise = null)
{
    /// <summary>What the first line's format says.</summary>
    public const string Format = "tickover/practice/1";

    private static readonly JsonWriterOptions Readable = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The first line: what stands on the engine and can be turned.</summary>
    /// <returns>One line of JSON.</returns>
    public string Greeting() => Line(json =>
    {
        json.WriteString("schema", Format);
        json.WriteString("engine", engine.Plan.Name);
        json.WriteString("layout", Camel(engine.Plan.Layout.ToString()));
        json.WriteNumber("idleRpm", engine.Plan.IdleRpm);
        json.WriteStartArray("barrels");
        engine.Plan.Barrels.ToList().ForEach(b => Barrel(json, b));
        json.WriteEndArray();
        json.WriteStartArray("adjusters");
        engine.Plan.Adjusters.ToList().ForEach(a => Adjusters(json, a));
        json.WriteEndArray();
        json.WriteStartArray("speeds");
        PracticeLimits.Speeds(engine.Plan).ToList().ForEach(json.WriteNumberValue);
        json.WriteEndArray();
    });

    /// <summary>Answers one line.</summary>
    /// <param name="line">An act as JSON, or anything at all.</param>
    /// <returns>One line of JSON.</returns>
    public string Answer(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        var asked = JsonActs.Read(line);
        if (asked.IsAdvice && advise is not null)
        {
            return advise();
        }

        var answer = asked.IsAdvice ? PracticeAnswer.No("No advice is given here.") : asked.Do is { } act ? act(engine) : PracticeAnswer.No(asked.Complaint!);
        return Line(json => Write(json, answer));
    }

    private void Write(Utf8JsonWriter json, PracticeAnswer answer)
    {
        json.WriteBoolean("done", answer.Done);
        json.WriteString("said", answer.Words);
        json.WriteNumber("minutes", Math.Round(engine.Minutes, 2));
        if (answer.Step is { } step)
        {
            json.WriteStartObject("step");
            StepJson.Write(json, step);
            json.WriteEndObject();
        }

        if (answer.Reading is { } reading)
        {
            json.WriteStartObject("reading");
            StepJson.Reading(json, reading);
            json.WriteEndObject();
        }

        if (answer.Score is { } score)
        {
            json.WriteStartObject("score");
            ScoreJson.Write(json, score);
            json.WriteEndObject();
            json.WriteStartArray("hidden");
            engine.Truth().Faults.ToList().ForEach(f => ScoreJson.Hidden(json, f));
            json.WriteEndArray();
        }
    }

    private static void Barrel(Utf8JsonWriter json, PlanBarrel barrel)
    {
        json.WriteStartObject();
        json.WriteNumber("barrel", barrel.Number);
        json.WriteNumber("carburettor", barrel.Carburettor);
        json.WriteNumber("bank", barrel.Bank);
        json.WriteEndObject();
    }

    private static void Adjusters(Utf8JsonWriter json, Adjuster adjuster)
    {
        json.WriteStartObject();
        json.WriteString("key", adjuster.Key);
        json.WriteString("what", $"{adjuster.Where}, {adjuster.Thing}");
        json.WriteStartArray("barrels");
        adjuster.Barrels.ToList().ForEach(json.WriteNumberValue);
        json.WriteEndArray();
        json.WriteString("more", adjuster.More);
        json.WriteString("less", adjuster.Less);
        json.WriteNumber("stepsATurn", adjuster.StepsATurn);
        json.WriteNumber("travelTurns", adjuster.TravelTurns);
        json.WriteEndObject();
    }

    private static string Line(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Readable))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static string Camel(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
