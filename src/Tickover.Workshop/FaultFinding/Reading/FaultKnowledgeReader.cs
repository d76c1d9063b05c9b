using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Visits;

namespace Tickover.Workshop.FaultFinding.Reading;

/// <summary>Reads a document of causes, symptoms and tests into knowledge, or into everything that is wrong with it.</summary>
internal static class FaultKnowledgeReader
{
    private const string Kind = "faults";

    public static FaultKnowledgeReading Read(string json, FaultKnowledge? upon)
    {
        var root = SourceParser.Parse(json, out var syntax, Kind);
        if (root is null)
        {
            return new FaultKnowledgeReading(null, [syntax!]);
        }

        var faults = new Faults(Kind);
        if (root.Kind != SourceKind.Object || root["format"] is not { Kind: SourceKind.Text, Text: FaultForm.Format })
        {
            faults.WrongKind("format", root["format"] ?? root, $"\"{FaultForm.Format}\", the one format this version reads", $"\"format\": \"{FaultForm.Format}\"");
            return new FaultKnowledgeReading(null, faults.All);
        }

        var knowledge = Knowledge(new ObjectReader(root, string.Empty, FaultForm.Root, faults), upon);
        if (faults.All.Count == 0)
        {
            FaultChecks.Check(knowledge, faults);
        }

        return new FaultKnowledgeReading(faults.All.Count == 0 ? knowledge : null, faults.All);
    }

    private static FaultKnowledge Knowledge(ObjectReader root, FaultKnowledge? upon)
    {
        var causes = (upon?.Causes ?? new Dictionary<string, FaultCause>(StringComparer.Ordinal)).ToDictionary(StringComparer.Ordinal);
        foreach (var cause in Once(root, FaultFields.Items(root, "causes", FaultForm.Cause).Select(Cause), c => c.Key, "causes"))
        {
            causes[cause.Key] = cause;
        }

        ClosedCases.Learn(root, causes);
        var symptoms = Once(root, SymptomReader.Read(root, upon), s => s.Key, "symptoms");
        var tests = Once(root, FaultFields.Items(root, "tests", FaultForm.Test).Select(TestReader.Test), t => t.Key, "tests");
        return new FaultKnowledge
        {
            Name = FaultFields.Needed(root, "name"),
            Version = FaultFields.Needed(root, "version"),
            Causes = causes,
            Symptoms = Over(upon?.Symptoms, symptoms, s => s.Key),
            Tests = Over(upon?.Tests, tests, t => t.Key),
        };
    }

    private static FaultCause Cause(ObjectReader reader)
    {
        var prior = FaultFields.Number(reader, "prior", 1e-6, 0.9, FaultForm.UsualPrior);
        return new FaultCause
        {
            Key = FaultFields.Needed(reader, "key"),
            Words = FaultFields.Needed(reader, "words"),
            Where = FaultFields.Needed(reader, "where"),
            Spot = reader["spot"] is null ? null : FaultFields.Word<FaultSpot>(reader, "spot"),
            ToDo = FaultFields.Needed(reader, "toDo"),
            Stage = FaultFields.Word<Stage>(reader, "stage"),
            Kind = FaultFields.Word<FaultKind>(reader, "kind"),
            Part = reader["part"] is null ? string.Empty : FaultFields.Needed(reader, "part"),
            Prior = prior,
            Learned = prior,
            Origin = FaultFields.Needed(reader, "origin"),
            Confidence = FaultFields.Trust(reader),
        };
    }

    private static List<T> Once<T>(ObjectReader root, IEnumerable<T> items, Func<T, string> key, string list)
    {
        var kept = items.ToList();
        foreach (var twice in kept.GroupBy(key, StringComparer.Ordinal).Where(g => g.Count() > 1))
        {
            root.Faults.Add(list, $"\"{twice.Key}\" stands {twice.Count()} times", "each key once", "Take the others out or give them keys of their own.");
        }

        return kept;
    }

    // Those replaced keep their place; new ones follow.
    private static List<T> Over<T>(IReadOnlyList<T>? below, IReadOnlyList<T> above, Func<T, string> key)
    {
        var own = above.GroupBy(key, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
        var kept = (below ?? []).Select(b => own.Remove(key(b), out var mine) ? mine : b).ToList();
        return [.. kept, .. above.Where(a => own.ContainsKey(key(a)))];
    }
}
