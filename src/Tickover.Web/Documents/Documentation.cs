using System.Text.RegularExpressions;
using Markdig;
using Markdig.Extensions.AutoIdentifiers;

namespace Tickover.Web.Documents;

/// <summary>The pages of docs that the app shows: the checks against the outside and the equations.</summary>
public sealed partial class Documentation
{
    private const string Prefix = "docs/";
    private const string List = "physics/README";
    private const int OneSecond = 1000;

    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .UsePipeTables()
        .UseAutoIdentifiers(AutoIdentifierOptions.GitHub)
        .DisableHtml()
        .Build();

    private readonly Dictionary<string, string> _embedded;
    private readonly string? _folder;

    /// <summary>Finds the embedded pages.</summary>
    /// <param name="options">A folder to read from instead, where one is given.</param>
    public Documentation(WebAppOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        _folder = options.DocumentationFolder;
        var assembly = typeof(Documentation).Assembly;
        _embedded = assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal))
            .ToDictionary(n => n[Prefix.Length..], n => Text(assembly.GetManifestResourceStream(n)!), StringComparer.Ordinal);
    }

    /// <summary>Names of the pages about the physics, such as "metering".</summary>
    public IReadOnlyList<string> Physics =>
        [.. Names().Where(n => n.StartsWith("physics/", StringComparison.Ordinal) && !n.EndsWith("/README", StringComparison.Ordinal)).Select(n => n["physics/".Length..]).Order(StringComparer.Ordinal)];

    /// <summary>What a page on the physics is about, in the words of their list.</summary>
    /// <param name="name">Name such as <c>metering</c>.</param>
    /// <returns>A few words; empty where the list does not say.</returns>
    public string About(string name)
    {
        var list = Names().Contains(List, StringComparer.Ordinal) ? Source(List) : "";
        return ListRow().Matches(list).FirstOrDefault(r => string.Equals(r.Groups["name"].Value, name, StringComparison.Ordinal))?.Groups["about"].Value ?? "";
    }

    /// <summary>A page as HTML.</summary>
    /// <param name="name">Name such as <c>checks</c> or <c>physics/metering</c>.</param>
    /// <returns>The HTML, or null where there is no such page.</returns>
    public string? Html(string name)
    {
        var text = Names().Contains(name, StringComparer.Ordinal) ? Source(name) : null;
        return text is null ? null : Untitled(Subscripted(Linked(WithoutInlineStyle(Markdown.ToHtml(WithoutComments(text), Pipeline)))));
    }

    // The content security policy allows no style in the mark-up; alignment becomes a class.
    private static string WithoutInlineStyle(string html) => html
        .Replace(" style=\"text-align: right;\"", " class=\"right\"", StringComparison.Ordinal)
        .Replace(" style=\"text-align: center;\"", " class=\"middle\"", StringComparison.Ordinal)
        .Replace(" style=\"text-align: left;\"", "", StringComparison.Ordinal);

    // The strip holds the title; the document's own would say it again.
    private static string Untitled(string html) => Title().Replace(html, "", 1);

    // Documents link to files, the app to addresses.
    private static string Linked(string html) => html
        .Replace(".md\"", "\"", StringComparison.Ordinal)
        .Replace(".md#", "#", StringComparison.Ordinal);

    // A note to whoever edits the file is no part of the page.
    private static string WithoutComments(string text) => Comment().Replace(text, "");

    // The documents write an index as C_d; in code it stays as it is typed.
    private static string Subscripted(string html) => CodeOrIndex().Replace(html, m => m.Groups["index"].Success ? $"<sub>{m.Groups["index"].Value}</sub>" : m.Value);

    [GeneratedRegex(@"^\| \[(?<name>[a-z-]+)\.md\]\([^)]*\) \| (?<about>[^|]+?) \|", RegexOptions.ExplicitCapture | RegexOptions.Multiline, OneSecond)]
    private static partial Regex ListRow();

    [GeneratedRegex("<h1.*?</h1>", RegexOptions.Singleline, OneSecond)]
    private static partial Regex Title();

    [GeneratedRegex("<!--.*?-->", RegexOptions.Singleline, OneSecond)]
    private static partial Regex Comment();

    [GeneratedRegex("<code>.*?</code>|<pre>.*?</pre>|<[^>]*>|(?<=[A-Za-zΑ-ω])_(?<index>[A-Za-z0-9]+)", RegexOptions.ExplicitCapture | RegexOptions.Singleline, OneSecond)]
    private static partial Regex CodeOrIndex();

    private static string Text(Stream stream)
    {
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    private IEnumerable<string> Names() => _folder is null
        ? _embedded.Keys
        : Directory.EnumerateFiles(_folder, "*.md", SearchOption.AllDirectories)
            .Select(p => Path.ChangeExtension(Path.GetRelativePath(_folder, p), null).Replace('\\', '/'));

    private string Source(string name) => _folder is null ? _embedded[name] : File.ReadAllText(Path.Combine(_folder, name + ".md"));
}
