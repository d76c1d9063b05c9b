using System.Text.Json;
using System.Text.Json.Serialization;

namespace Tickover.Bench.Road;

/// <summary>The file a long study is kept in, a line a car, so that one broken off goes on where it was.</summary>
/// <param name="Path">The file; null keeps nothing. The file is only of use for the same seed, cars and code.</param>
internal sealed record StudyKeep(string? Path)
{
    private static readonly JsonSerializerOptions AsIs = new() { NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals };
    private readonly Lock _one = new();

    internal IReadOnlyList<StudyResult> Read() =>
        Path is null || !File.Exists(Path) ? [] : [.. File.ReadLines(Path).Select(line => JsonSerializer.Deserialize<StudyResult>(line, AsIs)!)];

    internal void Add(StudyResult result)
    {
        if (Path is null)
        {
            return;
        }

        lock (_one)
        {
            File.AppendAllText(Path, JsonSerializer.Serialize(result, AsIs) + Environment.NewLine);
        }
    }
}
