using Tickover.Workshop.FaultFinding;

namespace Tickover.Workshop.Tests.FaultFinding;

/// <summary>A table small enough to be worked out by hand.</summary>
internal static class SmallTable
{
    /// <summary>Two causes of one symptom, one of them ignition; a look at each.</summary>
    public const string Text = """
        {
          "format": "tickover-faults-1", "name": "small", "version": "1",
          "causes": [
            { "key": "jet", "words": "Jet blocked", "where": "jet", "toDo": "clean it", "stage": "Build", "kind": "fuel", "prior": 0.2, "origin": "invented", "confidence": "low" },
            { "key": "coil", "words": "Coil hot", "where": "coil", "toDo": "renew it", "stage": "Balance", "kind": "ignition", "prior": 0.1, "origin": "invented", "confidence": "low" }
          ],
          "symptoms": [
            { "key": "stops", "group": "Road", "words": "It stops", "also": ["dies on the road"], "leak": 0.1, "causes": { "jet": 0.5, "coil": 0.8 }, "origin": "invented", "confidence": "low" }
          ],
          "tests": [
            { "key": "see-jet", "question": "Is the jet blocked?", "minutes": 5, "sign": true, "origin": "invented", "confidence": "low", "answers": [
              { "key": "yes", "words": "it is", "otherwise": 0.1, "likelihood": { "jet": 0.9 } }, { "key": "no", "words": "it is not", "otherwise": 0.9, "likelihood": { "jet": 0.1 } }] },
            { "key": "see-spark", "question": "Is there a spark?", "minutes": 20, "partsOff": 1, "caution": "draining", "sign": true, "origin": "invented", "confidence": "low", "answers": [
              { "key": "no", "words": "none", "otherwise": 0.1, "likelihood": { "coil": 0.9 } }, { "key": "yes", "words": "a good one", "otherwise": 0.9, "likelihood": { "coil": 0.1 } }] }
          ]
        }
        """;

    public static FaultKnowledge Empty { get; } = new() { Name = "none", Version = "0", Causes = new Dictionary<string, FaultCause>(StringComparer.Ordinal), Symptoms = [], Tests = [] };

    public static FaultKnowledge Knowledge { get; } = FaultKnowledgeDocument.Read(Text, Empty).Knowledge!;
}
