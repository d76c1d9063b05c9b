using System.Text;
using System.Text.Json;
using Tickover.Workshop.Gauges;

namespace Tickover.Cli.Output;

/// <summary>A gauge's analysis as JSON: docs/schemas/gauge.schema.json.</summary>
internal static class GaugeJson
{
    private const double Litres = 1000, PerMinute = 60000;

    /// <summary>Writes the document.</summary>
    /// <param name="a">The analysis.</param>
    /// <returns>The text.</returns>
    public static string Text(GaugeAnalysis a)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("schema", "tickover/gauge/1");
            json.WriteString("name", a.Setup.Name);
            json.WriteString("road", a.Setup.Road.Name);
            json.WriteString("said", a.Headline);
            json.WriteString("validity", a.Film.Moments.Validity.Kind.ToString());
            Answers(json, a);
            Remedies(json, a);
            Course(json, a.Film);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + Environment.NewLine;
    }

    private static void Answers(Utf8JsonWriter json, GaugeAnalysis a)
    {
        json.WriteStartArray("answers");
        foreach (var (question, answer) in a.Answers)
        {
            json.WriteStartObject();
            json.WriteString("question", question);
            json.WriteString("answer", answer);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Remedies(Utf8JsonWriter json, GaugeAnalysis a)
    {
        json.WriteStartArray("remedies");
        foreach (var row in a.Remedies)
        {
            json.WriteStartObject();
            json.WriteString("remedy", row.Remedy.ToString());
            json.WriteString("words", row.Words);
            Number(json, "rmsLitres", row.RmsLitres);
            Number(json, "peakLitres", row.PeakLitres);
            json.WriteNumber("falseLamps", row.FalseLamps);
            if (row.LevelMinutes is { } minutes)
            {
                Number(json, "levelMinutes", minutes);
            }
            else
            {
                json.WriteNull("levelMinutes");
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Course(Utf8JsonWriter json, GaugeFilm film)
    {
        var m = film.Moments;
        json.WriteStartArray("course");
        for (var i = 0; i < m.Count; i += 10)
        {
            json.WriteStartObject();
            Number(json, "seconds", i * m.EverySeconds);
            Number(json, "leftLitres", Litres * m.LeftVolumes[i]);
            Number(json, "rightLitres", Litres * m.RightVolumes[i]);
            Number(json, "pipeLitresPerMinute", PerMinute * m.PipeFlows[i]);
            Number(json, "senderMillimetres", 1000 * m.SenderLevels[i]);
            Number(json, "travel", m.Travels[i]);
            Number(json, "ohms", m.Ohms[i]);
            Number(json, "needle", film.Pointer[i]);
            Number(json, "needleLitres", film.Needle[i]);
            Number(json, "estimateLitres", film.Estimate[i]);
            Number(json, "halfBandLitres", film.HalfBand[i]);
            json.WriteBoolean("lamp", m.Lamps[i]);
            json.WriteBoolean("pickUpCovered", m.Covered[i]);
            Number(json, "ahead", m.Ahead[i]);
            Number(json, "left", m.Left[i]);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Number(Utf8JsonWriter json, string name, double value) => json.WriteNumber(name, Math.Round(value, 4));
}
