using Tickover.Workshop.Cars.Reading;

namespace Tickover.Workshop.FaultFinding.Reading;

/// <summary>Reads symptoms; one may take its causes from another.</summary>
internal static class SymptomReader
{
    public static IEnumerable<FaultSymptom> Read(ObjectReader root, FaultKnowledge? upon)
    {
        var read = FaultFields.Items(root, "symptoms", FaultForm.Symptom).Select(r => (Reader: r, Symptom: Symptom(r), Like: r["like"] is null ? null : FaultFields.Needed(r, "like"))).ToList();
        return [.. read.Select(s => s.Like is null ? s.Symptom : s.Symptom with { Causes = Followed(s.Reader, s.Symptom.Key, read, upon) })];
    }

    private static FaultSymptom Symptom(ObjectReader reader) => new()
    {
        Key = FaultFields.Needed(reader, "key"),
        Group = FaultFields.Needed(reader, "group"),
        Words = FaultFields.Needed(reader, "words"),
        Also = [.. (reader.List("also", "[\"…\"]") ?? []).Where(n => n.Kind == SourceKind.Text).Select(n => n.Text)],
        Leak = FaultFields.Number(reader, "leak", 1e-6, 0.9, FaultForm.UsualLeak),
        Causes = reader["like"] is null ? FaultFields.Chances(reader, "causes") : new Dictionary<string, double>(StringComparer.Ordinal),
        Origin = FaultFields.Needed(reader, "origin"),
        Confidence = FaultFields.Trust(reader),
    };

    private static IReadOnlyDictionary<string, double> Followed(
        ObjectReader reader, string key, IReadOnlyList<(ObjectReader Reader, FaultSymptom Symptom, string? Like)> read, FaultKnowledge? upon)
    {
        var way = new List<string>();
        var at = key;
        while (read.FirstOrDefault(s => string.Equals(s.Symptom.Key, at, StringComparison.Ordinal)) is { Like: { } next })
        {
            way.Add(at);
            if (way.Contains(next, StringComparer.Ordinal))
            {
                reader.Faults.Add(reader.At("like"), $"The symptoms go round in a ring: {string.Join(" → ", [.. way, next])}", "a symptom that names its own causes at the end", "Write the causes out at one of them.");
                return new Dictionary<string, double>(StringComparer.Ordinal);
            }

            at = next;
        }

        var found = read.FirstOrDefault(s => string.Equals(s.Symptom.Key, at, StringComparison.Ordinal)).Symptom ?? upon?.Symptom(at);
        if (found is null)
        {
            reader.Faults.Add(reader.At("like"), $"There is no symptom \"{at}\"", "the key of a symptom", "Mend the key.");
        }

        return found?.Causes ?? new Dictionary<string, double>(StringComparer.Ordinal);
    }
}
