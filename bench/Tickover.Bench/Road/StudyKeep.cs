using System.Text.Json;
using System.Text.Json.Serialization;

namespace Tickover.Bench.Road;

/// <summary>The file a long study is kept in, a line a car, so that one broken off goes on where it was.</summary>
/// <param name="Path">The file; null keeps nothing. Made by other code it is of no use: begin another.</param>
/// <param name="Of">Which study; results of another in the same file are left alone.</param>
internal sealed record StudyKeep(string? Path, string Of)
{
    private static readonly JsonSerializerOptions AsIs = new() { NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals };
    private readonly Lock _one = new();

    internal IReadOnlyList<StudyResult> Read() =>
        Path is null || !File.Exists(Path) ? [] : [.. File.ReadLines(Path).Select(Result).OfType<StudyResult>().Where(r => string.Equals(r.Of, Of, StringComparison.Ordinal))];

    internal void Add(StudyResult result)
    {
        if (Path is null)
        {
            return;
        }

        lock (_one)
        {
            // a line of its own, whatever a broken-off one left behind
            File.AppendAllText(Path, Environment.NewLine + JsonSerializer.Serialize(result, AsIs));
        }
    }

    // an empty line is between two results, half a one where the study was broken off: that car is worked again
    private static StudyResult? Result(string line)
    {
        try
        {
            return line.Length == 0 ? null : JsonSerializer.Deserialize<StudyResult>(line, AsIs);
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
