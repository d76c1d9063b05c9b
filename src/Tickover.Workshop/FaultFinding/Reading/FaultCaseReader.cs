using Tickover.Workshop.Cars.Reading;

namespace Tickover.Workshop.FaultFinding.Reading;

/// <summary>Reads a case into what is known of it, or into everything that is wrong with it.</summary>
internal static class FaultCaseReader
{
    private const string Kind = "faults";

    private static readonly string[] Root = ["format", "name", "symptoms", "ruledOut", "answers", "note"];
    private static readonly string[] Answer = ["test", "answer", "sure", "note"];

    public static FaultCaseReading Read(string json, FaultKnowledge knowledge)
    {
        var root = SourceParser.Parse(json, out var syntax, Kind);
        if (root is null)
        {
            return new FaultCaseReading(null, [syntax!]);
        }

        var faults = new Faults(Kind);
        if (root.Kind != SourceKind.Object || root["format"] is not { Kind: SourceKind.Text, Text: FaultCaseDocument.Format })
        {
            faults.WrongKind("format", root["format"] ?? root, $"\"{FaultCaseDocument.Format}\", the one format this version reads", $"\"format\": \"{FaultCaseDocument.Format}\"");
            return new FaultCaseReading(null, faults.All);
        }

        var reader = new ObjectReader(root, string.Empty, Root, faults);
        var given = new FaultCase
        {
            Name = reader["name"] is null ? string.Empty : FaultFields.Needed(reader, "name"),
            Symptoms = Symptoms(reader, knowledge),
            RuledOut = RuledOut(reader, knowledge),
            Answers = [.. FaultFields.Items(reader, "answers", Answer).Select(a => Given(a, knowledge)).OfType<FaultGiven>()],
        };
        if (reader["symptoms"] is not { Kind: SourceKind.List, Items.Count: > 0 })
        {
            faults.Missing("symptoms", "What is wrong with the car", "one symptom or more, by key or by words", $"\"symptoms\": [\"{knowledge.Symptoms[0].Key}\"]");
        }

        return new FaultCaseReading(faults.All.Count == 0 ? given : null, faults.All);
    }

    private static List<string> Symptoms(ObjectReader reader, FaultKnowledge knowledge)
    {
        var keys = new List<string>();
        foreach (var (text, path) in Texts(reader, "symptoms"))
        {
            var (meant, closest) = SymptomSearch.Find(knowledge, text);
            if (meant is null)
            {
                reader.Faults.Add(path, $"There is no symptom \"{text}\"", "a key or words of docs/fault-finder.md", SymptomSearch.Offer(closest));
            }
            else if (!keys.Contains(meant.Key, StringComparer.Ordinal))
            {
                keys.Add(meant.Key);
            }
        }

        return keys;
    }

    private static List<string> RuledOut(ObjectReader reader, FaultKnowledge knowledge)
    {
        var keys = new List<string>();
        foreach (var (text, path) in Texts(reader, "ruledOut"))
        {
            if (knowledge.Causes.ContainsKey(text))
            {
                keys.Add(text);
            }
            else
            {
                reader.Faults.Add(path, $"There is no cause \"{text}\"", "the key of a cause", CauseSearch.Offer(knowledge, text));
            }
        }

        return keys;
    }

    private static FaultGiven? Given(ObjectReader reader, FaultKnowledge knowledge)
    {
        var key = FaultFields.Needed(reader, "test");
        var answer = FaultFields.Needed(reader, "answer");
        if (knowledge.Test(key) is not { } test)
        {
            var near = Spelling.Nearest(key, knowledge.Tests.Select(t => t.Key));
            reader.Faults.Add(reader.At("test"), $"There is no test \"{key}\"", "the key of a test", near is null ? "Mend the key." : $"Did you mean \"{near}\"?");
            return null;
        }

        if (FaultReply.Read(test, answer) is not { } given)
        {
            reader.Faults.Add(reader.At("answer"), $"\"{answer}\" is no answer to \"{test.Question}\"", FaultReply.Allowed(test), "Write one of these words.");
            return null;
        }

        return reader["sure"] is { Kind: SourceKind.Literal, Text: "false" } && given.Certainty == FaultCertainty.Sure ? given with { Certainty = FaultCertainty.Leaning } : given;
    }

    private static IEnumerable<(string Text, string Path)> Texts(ObjectReader reader, string member)
    {
        foreach (var (node, i) in (reader.List(member, "[\"…\"]") ?? []).Select((node, i) => (node, i)))
        {
            var path = $"{member}[{i}]";
            if (node.Kind == SourceKind.Text && node.Text.Trim().Length > 0)
            {
                yield return (node.Text.Trim(), path);
            }
            else
            {
                reader.Faults.WrongKind(path, node, "a text", "\"…\"");
            }
        }
    }
}
