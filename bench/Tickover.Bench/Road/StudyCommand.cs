using System.Globalization;

namespace Tickover.Bench.Road;

/// <summary>The words of the study's command: --cars N, --seed N, --habit-only, --samples, --keep FILE.</summary>
internal static class StudyCommand
{
    private const int UsualCars = 200;

    internal static int Run(IReadOnlyList<string> words)
    {
        var (cars, seed, onlyHabit, samples, keep) = (UsualCars, 1, false, false, (string?)null);
        for (var i = 0; i < words.Count; i++)
        {
            switch (words[i])
            {
                case "--cars" when i + 1 < words.Count && Number(words[i + 1]) is > 0 and var n:
                    (cars, i) = (n, i + 1);
                    break;
                case "--seed" when i + 1 < words.Count && Number(words[i + 1]) is { } s:
                    (seed, i) = (s, i + 1);
                    break;
                case "--keep" when i + 1 < words.Count:
                    (keep, i) = (words[i + 1], i + 1);
                    break;
                case "--habit-only":
                    onlyHabit = true;
                    break;
                case "--samples":
                    samples = true;
                    break;
                default:
                    Console.Error.WriteLine($"study [--cars N] [--seed N] [--habit-only] [--samples] [--keep FILE]: '{words[i]}' is not understood");
                    return 2;
            }
        }

        return RoadStudy.Run(cars, seed, onlyHabit, new StudyCars(samples), new StudyKeep(keep, FormattableString.Invariant($"seed {seed}, {(samples ? "samples" : "developed cars")}, {(onlyHabit ? "habit only" : "both ways")}")));
    }

    private static int? Number(string text) => int.TryParse(text, NumberStyles.Integer, CultureInfo.InvariantCulture, out var number) ? number : null;
}
