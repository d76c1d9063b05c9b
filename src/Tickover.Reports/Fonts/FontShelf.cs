using System.Collections.Frozen;

namespace Tickover.Reports.Fonts;

/// <summary>The typefaces of this library, read once.</summary>
internal static class FontShelf
{
    /// <summary>What stands for a character that no typeface here has: seen, never a silent box.</summary>
    internal const string Missing = "?";

    private static readonly FrozenDictionary<Typeface, Lazy<FontFile>> Files = new Dictionary<Typeface, Lazy<FontFile>>
    {
        [Typeface.Regular] = new(() => Read("NotoSans-Regular")),
        [Typeface.Bold] = new(() => Read("NotoSans-Bold")),
        [Typeface.Italic] = new(() => Read("NotoSans-Italic")),
        [Typeface.Signs] = new(() => Read("NotoSansMath-Regular")),
    }.ToFrozenDictionary();

    /// <summary>One typeface.</summary>
    internal static FontFile Of(Typeface face) => Files[face].Value;

    /// <summary>The typeface that draws a character where another was asked for; null where none does.</summary>
    internal static Typeface? For(int character, Typeface wanted) =>
        Of(wanted).Has(character) ? wanted
        : Of(Typeface.Signs).Has(character) ? Typeface.Signs
        : null;

    private static FontFile Read(string name)
    {
        using var stream = typeof(FontShelf).Assembly.GetManifestResourceStream($"fonts/{name}")
            ?? throw new InvalidOperationException($"font {name} was left out of the build");
        using var memory = new MemoryStream();
        stream.CopyTo(memory);
        return new FontFile(memory.ToArray());
    }
}
