using System.Security.Cryptography;
using System.Text;
using Tickover.Reports.Charts;
using Tickover.Reports.Paper.Html;

namespace Tickover.Reports.Paper;

/// <summary>Writes a document as one HTML file that needs nothing else: style and pictures are inside, and it has no script.</summary>
public static class PaperHtml
{
    private static readonly Lazy<string> Style = new(() => $":root{{{string.Concat(PaperColours.ByRole.OrderBy(c => c.Key, StringComparer.Ordinal).Select(c => $"--{c.Key}:{c.Value};"))}}}\n{Sheet()}");

    /// <summary>The source of style to allow in a content policy that serves the file, such as "'sha256-...'".</summary>
    public static string StyleSource => $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(Style.Value)))}'";

    /// <summary>Writes the document.</summary>
    /// <param name="document">What to write.</param>
    /// <returns>The file's text, to be stored as UTF-8.</returns>
    /// <exception cref="ArgumentNullException">The document is missing.</exception>
    public static string Write(PaperDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        var page = new HtmlPage();
        page.Blocks(document.Blocks);
        return new StringBuilder("<!doctype html>\n<html").Attribute("lang", document.Language)
            .Append("><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width,initial-scale=1\"><title>").Escaped(PaperText.Clean(document.Title))
            .Append("</title><meta name=\"author\"").Attribute("content", PaperText.Clean(document.Author))
            .Append("><style>").Append(Style.Value).Append("</style></head>\n<body><main").Append(document.OneSheet ? " class=\"card\">" : ">").Append('\n')
            .Append(page.Text).Append("</main>\n<footer><p>").Escaped(PaperText.Clean(document.Foot)).Append("</p></footer></body></html>\n").ToString();
    }

    private static string Sheet()
    {
        using var stream = typeof(PaperHtml).Assembly.GetManifestResourceStream("paper.css")
            ?? throw new InvalidOperationException("the style sheet was left out of the build");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
