namespace Tickover.Web.Lan;

/// <summary>What a tablet may be called.</summary>
internal static class DeviceName
{
    /// <summary>Longest name, characters.</summary>
    public const int Longest = 40;

    /// <summary>A name as typed, tidied; null where it is none.</summary>
    public static string? Read(string? typed)
    {
        var words = (typed ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        var name = string.Join(' ', words);
        return name.Length is > 0 and <= Longest && !name.Any(c => char.IsControl(c) || char.GetUnicodeCategory(c) is System.Globalization.UnicodeCategory.Format) ? name : null;
    }
}
