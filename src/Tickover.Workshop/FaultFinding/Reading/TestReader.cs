using Tickover.Workshop.Cars.Reading;

namespace Tickover.Workshop.FaultFinding.Reading;

/// <summary>Reads tests and their answers.</summary>
internal static class TestReader
{
    public static FaultTest Test(ObjectReader reader)
    {
        var answers = FaultFields.Items(reader, "answers", FaultForm.Answer).Select(Answer).ToList();
        if (answers.Count < 2)
        {
            reader.Faults.Add(reader.At("answers"), $"{answers.Count} answers", "at least two", "Write what else can be seen.");
            answers = [.. answers, new("?", "?", 0, new Dictionary<string, double>(StringComparer.Ordinal)), new("??", "?", 0, new Dictionary<string, double>(StringComparer.Ordinal))];
        }

        return new FaultTest
        {
            Key = FaultFields.Needed(reader, "key"),
            Question = FaultFields.Needed(reader, "question"),
            Minutes = FaultFields.Number(reader, "minutes", 0.5, FaultForm.MostMinutes, 1),
            PartsOff = (int)FaultFields.Number(reader, "partsOff", 0, 2, 0),
            Caution = reader["caution"] is null ? string.Empty : FaultFields.Needed(reader, "caution"),
            IsSign = reader["sign"] is { Kind: SourceKind.Literal, Text: "true" },
            Covers = FaultFields.Keys(reader, "covers"),
            Answers = answers,
            Origin = FaultFields.Needed(reader, "origin"),
            Confidence = FaultFields.Trust(reader),
        };
    }

    private static FaultAnswer Answer(ObjectReader reader) => new(
        FaultFields.Needed(reader, "key"),
        FaultFields.Needed(reader, "words"),
        FaultFields.Number(reader, "otherwise", 0, 1, 0),
        FaultFields.Chances(reader, "likelihood"));
}
