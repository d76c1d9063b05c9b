using System.Text.Json;
using Tickover.Workshop.Balance;

namespace Tickover.Practice.Talk;

/// <summary>Reads one act written as a line of JSON: docs/practice.md.</summary>
internal static class JsonActs
{
    private const int LongestLine = 10_000;
    private const string Acts = "An act is one of: round, barrel, turn, rods, look, offer, repair, advise, finish; docs/practice.md.";

    private static readonly Dictionary<string, string[]> Members = new(StringComparer.Ordinal)
    {
        ["round"] = ["read"],
        ["barrel"] = ["held", "read"],
        ["turn"] = ["turns"],
        ["rods"] = [],
        ["look"] = [],
        ["offer"] = [],
        ["repair"] = [],
        ["advise"] = [],
        ["finish"] = [],
    };

    /// <summary>Reads a line; whatever it holds, the answer is an act or a complaint.</summary>
    public static Asked Read(string line)
    {
        if (line.Length > LongestLine)
        {
            return Asked.No($"A line of {line.Length} characters is no act; {LongestLine} is the most.");
        }

        try
        {
            using var document = JsonDocument.Parse(line);
            return document.RootElement.ValueKind == JsonValueKind.Object ? Act(document.RootElement) : Asked.No($"An act is an object, such as {{\"round\":\"idle\"}}. {Acts}");
        }
        catch (JsonException fault)
        {
            return Asked.No($"This line is no JSON (at character {fault.BytePositionInLine ?? 0}). {Acts}");
        }
        catch (InvalidOperationException)
        {
            // half a surrogate written as \ud800 is JSON and no text
            return Asked.No($"This line holds what is no text. {Acts}");
        }
    }

    private static Asked Act(JsonElement line)
    {
        var names = line.EnumerateObject().Select(p => p.Name).ToList();
        var acts = names.Where(Members.ContainsKey).ToList();
        if (acts.Count != 1)
        {
            return Asked.No(acts.Count == 0 ? Acts : $"One act a line; this has {string.Join(" and ", acts)}.");
        }

        var act = acts[0];
        if (names.FirstOrDefault(n => !string.Equals(n, act, StringComparison.Ordinal) && !Members[act].Contains(n, StringComparer.Ordinal)) is { } strange)
        {
            return Asked.No($"\"{strange}\" does not belong to \"{act}\".");
        }

        var value = line.GetProperty(act);
        return act switch
        {
            "round" => Round(line, value),
            "barrel" => Barrel(line, value),
            "turn" => Turn(line, value),
            "advise" => value.ValueKind == JsonValueKind.True ? Asked.Advice : Asked.No("Write {\"advise\":true}."),
            "finish" => value.ValueKind == JsonValueKind.True ? Asked.For(e => e.Finish()) : Asked.No("Write {\"finish\":true}."),
            _ => value.ValueKind == JsonValueKind.String ? OfText(act, value.GetString()!) : Asked.No($"\"{act}\" is a text; docs/practice.md."),
        };
    }

    private static Asked OfText(string act, string text) => act switch
    {
        "look" => Asked.For(e => e.LookAtStop(text)),
        "offer" => Asked.For(e => e.OfferRod(text)),
        "rods" => text switch
        {
            "off" => Asked.For(e => e.RodsOff()),
            "on" => Asked.For(e => e.RodsOn()),
            _ => Asked.No("rods: \"off\" or \"on\"."),
        },
        _ => Asked.For(e => FaultNames.Read(text, e.Plan) is { } place ? e.Repair(place) : PracticeAnswer.No(FaultNames.Complaint)),
    };

    private static Asked Round(JsonElement line, JsonElement round)
    {
        const string How = "round: \"idle\", or the speed to hold in rpm.";
        if (Kinds(line) is not { } what)
        {
            return Asked.No(ReadWords.Complaint);
        }

        return round.ValueKind switch
        {
            JsonValueKind.String when string.Equals(round.GetString(), "idle", StringComparison.Ordinal) => Asked.For(e => e.ReadRound(null, what)),
            JsonValueKind.Number when round.TryGetDouble(out var rpm) => Asked.For(e => e.ReadRound(rpm, what)),
            _ => Asked.No(How),
        };
    }

    private static Asked Barrel(JsonElement line, JsonElement barrel)
    {
        if (Kinds(line) is not { } what)
        {
            return Asked.No(ReadWords.Complaint);
        }

        double? held = null;
        if (line.TryGetProperty("held", out var speed))
        {
            if (speed.ValueKind != JsonValueKind.Number || !speed.TryGetDouble(out var rpm))
            {
                return Asked.No("held: the speed to hold in rpm; leave it out at idle.");
            }

            held = rpm;
        }

        return Numbers(barrel) is { } numbers ? Asked.For(e => e.ReadBarrels(numbers, held, what)) : Asked.No("barrel: the number of a barrel, or a list of some.");
    }

    private static List<int>? Numbers(JsonElement barrel)
    {
        List<JsonElement> all = barrel.ValueKind == JsonValueKind.Array ? [.. barrel.EnumerateArray()] : [barrel];
        return all.TrueForAll(b => b.ValueKind == JsonValueKind.Number && b.TryGetInt32(out _)) ? all.ConvertAll(b => b.GetInt32()) : null;
    }

    private static Asked Turn(JsonElement line, JsonElement key) =>
        key.ValueKind == JsonValueKind.String && key.GetString() is { } name && line.TryGetProperty("turns", out var turns) && turns.ValueKind == JsonValueKind.Number && turns.TryGetDouble(out var count)
            ? Asked.For(e => e.Turn(name, count))
            : Asked.No("turn: {\"turn\":\"stop:2\",\"turns\":0.125}; positive opens, or makes richer.");

    private static ReadKinds? Kinds(JsonElement line)
    {
        if (!line.TryGetProperty("read", out var read))
        {
            return ReadKinds.Air;
        }

        return read.ValueKind == JsonValueKind.Array && read.EnumerateArray().All(k => k.ValueKind == JsonValueKind.String)
            ? ReadWords.Kinds(read.EnumerateArray().Select(k => k.GetString()!))
            : null;
    }
}
