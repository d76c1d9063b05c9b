using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Tickover.Workshop.FaultFinding.Reading;

namespace Tickover.Workshop.FaultFinding;

/// <summary>Reads and writes cases: JSON, format <c>tickover-fault-1</c>; docs/faults-document.md.</summary>
public static class FaultCaseDocument
{
    /// <summary>What the document's format says.</summary>
    public const string Format = "tickover-fault-1";

    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Reads a case; never throws for what somebody typed.</summary>
    /// <param name="json">The text.</param>
    /// <param name="knowledge">What its keys are looked up in.</param>
    /// <returns>The case, or all faults.</returns>
    public static FaultCaseReading Read(string json, FaultKnowledge knowledge)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(knowledge);
        return FaultCaseReader.Read(json, knowledge);
    }

    /// <summary>Writes a case.</summary>
    /// <param name="given">The case.</param>
    /// <returns>The document; reading it gives the case again.</returns>
    public static string Write(FaultCase given)
    {
        ArgumentNullException.ThrowIfNull(given);
        var document = new JsonObject { ["format"] = Format };
        if (given.Name.Length > 0)
        {
            document["name"] = given.Name;
        }

        document["symptoms"] = Texts(given.Symptoms);
        document["ruledOut"] = Texts(given.RuledOut);
        document["answers"] = new JsonArray([.. given.Answers.Select(Answer)]);
        return document.ToJsonString(Readable) + "\n";
    }

    private static JsonArray Texts(IEnumerable<string> texts) => new([.. texts.Select(t => (JsonNode)JsonValue.Create(t))]);

    private static JsonNode Answer(FaultGiven given) => given.Certainty switch
    {
        FaultCertainty.Unsure => new JsonObject { ["test"] = given.Test, ["answer"] = FaultReply.Unsure },
        FaultCertainty.Leaning => new JsonObject { ["test"] = given.Test, ["answer"] = given.Answer, ["sure"] = false },
        _ => new JsonObject { ["test"] = given.Test, ["answer"] = given.Answer },
    };
}
