using System.Text.Json;
using Tickover.Workshop.Balance;

namespace Tickover.Practice.Talk;

/// <summary>Steps as a rounds document has them, so that what was practised can be put into one as it is.</summary>
internal static class StepJson
{
    /// <summary>Writes the members of a step.</summary>
    public static void Write(Utf8JsonWriter json, BalanceStep step)
    {
        switch (step)
        {
            case RoundRead read:
                Round(json, read.Round);
                break;
            case Turned turned:
                json.WriteString("turn", turned.Adjuster);
                json.WriteNumber("turns", Math.Round(turned.Turns, 4));
                break;
            case RodsTakenOff:
                json.WriteString("rods", "off");
                break;
            case RodsPutBack:
                json.WriteString("rods", "on");
                break;
            case LookedAt looked:
                json.WriteString(looked.What.StartsWith("stop", StringComparison.Ordinal) || string.Equals(looked.What, "master", StringComparison.Ordinal) ? "look" : "offer", looked.What);
                json.WriteNumber("gap", Math.Round(looked.Gap, 2));
                break;
            case CheckedFor looked:
                json.WriteString("checked", looked.Fault.ToString());
                json.WriteBoolean("found", looked.Found);
                break;
        }
    }

    /// <summary>Writes the members of a reading.</summary>
    public static void Reading(Utf8JsonWriter json, BarrelReading reading)
    {
        json.WriteNumber("barrel", reading.Barrel);
        Figure(json, "air", reading.Air);
        Figure(json, "vacuum", reading.Vacuum);
        Figure(json, "lambda", reading.Lambda);
        Figure(json, "header", reading.Header);
        Figure(json, "rpm", reading.Rpm);
    }

    private static void Round(Utf8JsonWriter json, BalanceRound round)
    {
        if (round.HeldRpm is { } held)
        {
            json.WriteNumber("round", held);
        }
        else
        {
            json.WriteString("round", "idle");
        }

        json.WriteString("moment", round.Moment == Workshop.Visits.Moment.AsFound ? "as found" : "working");
        Figure(json, "oil", round.OilCelsius);
        json.WriteStartArray("readings");
        foreach (var reading in round.Readings)
        {
            json.WriteStartObject();
            Reading(json, reading);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        if (round.Again is { } again)
        {
            json.WriteStartObject("again");
            Reading(json, again);
            json.WriteEndObject();
        }
    }

    private static void Figure(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } figure)
        {
            json.WriteNumber(name, Math.Round(figure, 2));
        }
    }
}
