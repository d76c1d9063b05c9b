using Tickover.Workshop.FaultFinding.Reading;

namespace Tickover.Workshop.FaultFinding;

/// <summary>Causes, symptoms and tests, as read from a document; docs/faults-document.md.</summary>
public sealed record FaultKnowledge
{
    private static readonly Lazy<FaultKnowledge> Built = new(ReadStandard);

    /// <summary>The table of the trade that comes with the program.</summary>
    public static FaultKnowledge Standard => Built.Value;

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Its version, as its writer counts.</summary>
    public required string Version { get; init; }

    /// <summary>Causes by key.</summary>
    public required IReadOnlyDictionary<string, FaultCause> Causes { get; init; }

    /// <summary>Symptoms in the order of the list.</summary>
    public required IReadOnlyList<FaultSymptom> Symptoms { get; init; }

    /// <summary>Tests in the order of the document.</summary>
    public required IReadOnlyList<FaultTest> Tests { get; init; }

    /// <summary>A symptom by its key.</summary>
    /// <param name="key">The key.</param>
    /// <returns>The symptom, or null.</returns>
    public FaultSymptom? Symptom(string key) => Symptoms.FirstOrDefault(s => string.Equals(s.Key, key, StringComparison.Ordinal));

    /// <summary>A test by its key.</summary>
    /// <param name="key">The key.</param>
    /// <returns>The test, or null.</returns>
    public FaultTest? Test(string key) => Tests.FirstOrDefault(t => string.Equals(t.Key, key, StringComparison.Ordinal));

    private static FaultKnowledge ReadStandard()
    {
        using var stream = typeof(FaultKnowledge).Assembly.GetManifestResourceStream("faults.json")!;
        using var reader = new StreamReader(stream);
        var reading = FaultKnowledgeReader.Read(reader.ReadToEnd(), null);
        return reading.Knowledge ?? throw new InvalidDataException(string.Join('\n', reading.Faults));
    }
}
