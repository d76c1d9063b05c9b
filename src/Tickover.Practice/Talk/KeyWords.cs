namespace Tickover.Practice.Talk;

/// <summary>Keys of adjusters as people say them: "stop 2" for "stop:2".</summary>
internal static class KeyWords
{
    /// <summary>The key of one or two words; empty where they are none.</summary>
    public static string Read(IReadOnlyList<string> words) => words.Count switch
    {
        1 => words[0],
        2 => $"{words[0].TrimEnd(':')}:{words[1]}",
        _ => "",
    };
}
