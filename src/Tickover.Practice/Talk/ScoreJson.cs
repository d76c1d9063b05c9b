using System.Text.Json;

namespace Tickover.Practice.Talk;

/// <summary>The score and what was hidden, as members of JSON.</summary>
internal static class ScoreJson
{
    public static void Write(Utf8JsonWriter json, PracticeScore score)
    {
        json.WriteNumber("moves", score.Moves);
        json.WriteNumber("handling", score.Handling);
        json.WriteNumber("rounds", score.Rounds);
        json.WriteNumber("singleReadings", score.SingleReadings);
        json.WriteNumber("minutes", score.Minutes);
        json.WriteNumber("idleRpm", score.IdleRpm);
        json.WriteNumber("idleSpread", Math.Round(score.IdleSpread, 2));
        json.WriteNumber("idleWorst", Math.Round(score.IdleWorst, 4));
        json.WriteNumber("raisedWorst", Math.Round(score.RaisedWorst, 4));
        json.WriteBoolean("idleWithin", score.IdleWithin);
        json.WriteBoolean("raisedWithin", score.RaisedWithin);
        json.WriteNumber("faultsHidden", score.FaultsHidden);
        json.WriteNumber("faultsFound", score.FaultsFound);
        json.WriteNumber("namedWrong", score.NamedWrong);
    }

    public static void Hidden(Utf8JsonWriter json, PracticeFault fault)
    {
        json.WriteStartObject();
        json.WriteString("fault", fault.Place.ToString());
        json.WriteString("size", fault.Size);
        json.WriteBoolean("mended", fault.Mended);
        json.WriteEndObject();
    }
}
