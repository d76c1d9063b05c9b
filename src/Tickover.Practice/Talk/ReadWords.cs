using Tickover.Workshop.Balance;

namespace Tickover.Practice.Talk;

/// <summary>Words for what is read.</summary>
internal static class ReadWords
{
    public const string Complaint = "What can be read: air, vacuum, lambda, header, or all.";

    /// <summary>The kinds; null where a word is none. Air where there are no words.</summary>
    public static ReadKinds? Kinds(IEnumerable<string> words)
    {
        var kinds = ReadKinds.None;
        foreach (var word in words)
        {
            var one = word.ToUpperInvariant() switch
            {
                "AIR" => ReadKinds.Air,
                "VACUUM" => ReadKinds.Vacuum,
                "LAMBDA" => ReadKinds.Lambda,
                "HEADER" => ReadKinds.Header,
                "ALL" => PracticeEngine.AllKinds,
                _ => ReadKinds.None,
            };
            if (one == ReadKinds.None)
            {
                return null;
            }

            kinds |= one;
        }

        return kinds == ReadKinds.None ? ReadKinds.Air : kinds;
    }
}
