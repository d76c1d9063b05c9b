using System.Globalization;
using System.Text.RegularExpressions;
using Tickover.Architecture.Tests;

namespace Tickover.Cli.Tests;

/// <summary>
/// Texts that show what a command prints. Numbers may differ by one in their last digit, for another processor rounds
/// differently; words may not. To refresh them all: TICKOVER_UPDATE=1 dotnet test --project tests/Tickover.Cli.Tests.
/// </summary>
internal static partial class Shown
{
    private const double OneInTheLastDigit = 1.01;
    private const int OneSecond = 1000;

    /// <summary>Holds a file of the clone against what it should show, or writes it anew.</summary>
    public static async Task MatchesAsync(string file, string fresh)
    {
        if (Environment.GetEnvironmentVariable("TICKOVER_UPDATE") is "1")
        {
            await File.WriteAllTextAsync(Path.Combine(Repository.Root, file), fresh.TrimEnd('\n') + '\n');
        }

        var (shown, printed) = (Repository.Lines(file), fresh.TrimEnd('\n').Split('\n'));
        for (var i = 0; i < Math.Max(shown.Length, printed.Length); i++)
        {
            var (expected, actual) = (shown.ElementAtOrDefault(i), printed.ElementAtOrDefault(i));
            Assert.True(Alike(expected, actual), $"{file}, line {i + 1}\n  shown:   {expected}\n  printed: {actual}");
        }
    }

    /// <summary>Whether two lines are the same up to one in the last digit of each number.</summary>
    public static bool Alike(string? expected, string? actual)
    {
        if (expected is null || actual is null)
        {
            return false;
        }

        var (numbers, others) = (Number().Matches(expected), Number().Matches(actual));
        return numbers.Count == others.Count
            && string.Equals(Words(expected), Words(actual), StringComparison.Ordinal)
            && numbers.Zip(others).All(p => Near(p.First.Groups["number"].Value, p.Second.Groups["number"].Value));
    }

    // Blanks grow and shrink with the numbers beside them.
    private static string Words(string line) => Blanks().Replace(Number().Replace(line, "#"), " ").Trim();

    private static bool Near(string expected, string actual)
    {
        var decimals = Math.Min(Decimals(expected), Decimals(actual));
        var (a, b) = (double.Parse(expected, CultureInfo.InvariantCulture), double.Parse(actual, CultureInfo.InvariantCulture));
        return Math.Abs(a - b) <= OneInTheLastDigit * Math.Pow(10, -decimals);
    }

    private static int Decimals(string number) => number.Contains('.', StringComparison.Ordinal) ? number.Length - number.IndexOf('.', StringComparison.Ordinal) - 1 : 0;

    // With the mark that says which side of target a λ lies on: it turns where the digit turns.
    [GeneratedRegex(@"(?<number>\d+(\.\d+)?)[+\-?]?", RegexOptions.ExplicitCapture, OneSecond)]
    private static partial Regex Number();

    [GeneratedRegex(@"\s+", RegexOptions.None, OneSecond)]
    private static partial Regex Blanks();
}
