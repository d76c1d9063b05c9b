namespace Tickover.Workshop.FaultFinding.Reading;

/// <summary>The members of a document of causes, symptoms and tests, and their limits.</summary>
internal static class FaultForm
{
    public const string Format = "tickover-faults-1";

    /// <summary>How many cases a prior counts for beside closed ones.</summary>
    public const double PriorWorth = 50;

    public const double UsualPrior = 0.03;

    public const double UsualLeak = 0.003;

    public const int LongestWords = 400;

    public const double MostMinutes = 1440;

    /// <summary>Chances written with two or three digits may miss one by this.</summary>
    public const double SumSlack = 0.005;

    public static IReadOnlyList<string> Root { get; } = ["format", "name", "version", "note", "causes", "symptoms", "tests", "closed"];

    public static IReadOnlyList<string> Cause { get; } = ["key", "words", "where", "spot", "toDo", "stage", "kind", "part", "prior", "origin", "confidence", "note"];

    public static IReadOnlyList<string> Symptom { get; } = ["key", "row", "group", "words", "also", "leak", "origin", "confidence", "like", "causes", "note"];

    public static IReadOnlyList<string> Test { get; } = ["key", "row", "question", "minutes", "partsOff", "caution", "sign", "covers", "answers", "origin", "confidence", "note"];

    public static IReadOnlyList<string> Answer { get; } = ["key", "words", "otherwise", "likelihood", "note"];

    public static IReadOnlyList<string> Closed { get; } = ["cause", "found", "of", "note"];
}
