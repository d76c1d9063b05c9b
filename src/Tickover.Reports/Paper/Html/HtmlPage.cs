using System.Globalization;
using System.Text;
using Tickover.Reports.Charts;

namespace Tickover.Reports.Paper.Html;

/// <summary>Writes blocks as HTML. No style attribute and no script, so that the strictest content policy can serve it.</summary>
internal sealed class HtmlPage
{
    private const double PhotoUnits = 400;
    private readonly StringBuilder _html = new(1 << 14);
    private int _pictures;

    /// <summary>What was written so far.</summary>
    internal string Text => _html.ToString();

    internal void Blocks(IReadOnlyList<Block> blocks)
    {
        foreach (var block in blocks)
        {
            Write(block);
        }
    }

    private void Write(Block block)
    {
        switch (block)
        {
            case Heading heading: Element(heading.Level == 2 ? "h2" : "h3", heading.Text); break;
            case Masthead head: Write(head); break;
            case Paragraph paragraph: Write(paragraph); break;
            case Items items: Write(items); break;
            case Facts or Table: HtmlTables.Write(this, block); break;
            case Figure figure: Write(figure); break;
            case Photos photos: Write(photos); break;
            case QrLink or Signatures or PageBreak: WriteFurniture(block); break;
            default: WriteHolder(block); break;
        }
    }

    internal HtmlPage Raw(string markup)
    {
        _html.Append(markup);
        return this;
    }

    internal HtmlPage Words(Prose prose)
    {
        foreach (var run in prose.Runs)
        {
            Write(run);
        }

        return this;
    }

    private void Write(Run run)
    {
        if (run.Mark is { } mark)
        {
            _html.Append("<span class=\"sev ").Append(SeverityMark.Word(mark).ToLowerInvariant()).Append("\">");
            Picture(d => SeverityMark.Draw(d, mark, new Box(1, 1, 18, 18)), 20, 20, "");
            _html.Escaped(run.Text).Append("</span>");
            return;
        }

        var tag = run.Bold ? "b" : run.Italic ? "i" : run.Address is not null ? "a" : null;
        if (tag is not null)
        {
            _html.Append('<').Append(tag);
            _ = run.Address is { } address ? _html.Attribute("href", address) : _html;
            _html.Append('>');
        }

        var lines = run.Text.Split('\n');
        for (var i = 0; i < lines.Length; i++)
        {
            _html.Append(i == 0 ? "" : "<br>").Escaped(lines[i]);
        }

        _html.Append(tag is null ? "" : $"</{tag}>");
    }

    private void Write(Masthead head)
    {
        _html.Append("<header class=\"masthead\"><div>");
        Element("h1", head.Title);
        Element("p", head.Below);
        _html.Append("</div><p>");
        for (var i = 0; i < head.Beside.Count; i++)
        {
            Words(i == 0 ? Prose.Bold(head.Beside[i]) : Prose.Of(head.Beside[i])).Raw(i + 1 < head.Beside.Count ? "<br>" : "");
        }

        _html.Append("</p></header>\n");
    }

    private void Write(Paragraph paragraph) => Raw(paragraph.Voice switch
    {
        Voice.Lead => "<p class=\"lead\">",
        Voice.Small => "<p class=\"small\">",
        _ => "<p>",
    }).Words(paragraph.Words).Raw("</p>\n");

    private void Write(Items items)
    {
        var tag = items.Numbered ? "ol" : "ul";
        Raw($"<{tag}>");
        foreach (var entry in items.Entries)
        {
            Raw("<li>").Words(entry).Raw("</li>");
        }

        Raw($"</{tag}>\n");
    }

    private void Write(Figure figure)
    {
        Raw("<figure>");
        Picture(figure.Draw, figure.Width, figure.Height, figure.Label);
        Raw("</figure>\n");
    }

    private void Write(Photos photos)
    {
        Raw("<div class=\"photos\">");
        foreach (var photo in photos.Entries)
        {
            Raw("<figure class=\"photo\">");
            Write(photo);
            Raw("<figcaption>").Words(photo.Caption).Raw("</figcaption></figure>");
        }

        Raw("</div>\n");
    }

    private void Write(Photo photo)
    {
        if (photo.Jpeg is null || JpegSize.Read(photo.Jpeg) is not var (width, height))
        {
            Raw("<p class=\"nopicture\">The picture could not be read.</p>");
            return;
        }

        _html.Append("<div class=\"print\"><img").Attribute("src", $"data:image/jpeg;base64,{Convert.ToBase64String(photo.Jpeg)}")
            .Attribute("alt", photo.Caption.Text).Attribute("width", width).Attribute("height", height).Append('>');
        if (photo.Marks.Count > 0)
        {
            var tall = PhotoUnits * height / width;
            Picture(d => PhotoMarks.Draw(d, photo.Marks, PhotoUnits, tall), PhotoUnits, tall, "");
        }

        Raw("</div>");
    }

    private void WriteFurniture(Block block)
    {
        switch (block)
        {
            case QrLink link:
                var modules = new QrModules(link.Address);
                Raw("<div class=\"qr\">");
                Picture(modules.Draw, modules.Side, modules.Side, "Square code of the address beside it");
                Raw("<p>").Words(Prose.Of(link.Words + " ").ThenLink(link.Address, link.Address)).Raw("</p></div>\n");
                break;
            case Signatures signatures:
                Raw("<div class=\"signatures\">");
                foreach (var entry in signatures.Entries)
                {
                    Raw("<p><span class=\"line\">").Words(Prose.Of(entry.Signed)).Raw("</span><br>").Words(Prose.Of(entry.For)).Raw("</p>");
                }

                Raw("</div>\n");
                break;
            default:
                Raw("<div class=\"pagebreak\"></div>\n");
                break;
        }
    }

    private void WriteHolder(Block block)
    {
        switch (block)
        {
            case Callout callout:
                Raw("<div class=\"callout\">");
                Element("h2", callout.Title);
                Blocks(callout.Blocks);
                break;
            case SideBySide pair:
                Raw("<div class=\"pair\"><div>");
                Blocks(pair.Left);
                Raw("</div><div>");
                Blocks(pair.Right);
                Raw("</div>");
                break;
            case Together together:
                Raw("<div class=\"together\">");
                Blocks(together.Blocks);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(block), block, "a block that the page does not know");
        }

        Raw("</div>\n");
    }

    private void Element(string tag, string text) => _html.Append('<').Append(tag).Append('>').Escaped(PaperText.Clean(text)).Append("</").Append(tag).Append(">\n");

    // A picture without a sentence only repeats what the words beside it say
    private void Picture(Action<IDrawing> draw, double width, double height, string label)
    {
        var drawing = new SvgDrawing(string.Create(CultureInfo.InvariantCulture, $"p{++_pictures}"));
        draw(drawing);
        var svg = drawing.ToSvg(new SvgFrame { Width = width, Height = height, ClassName = "drawn", Label = label });
        var size = string.Create(CultureInfo.InvariantCulture, $" width=\"{width:0.#}\" height=\"{height:0.#}\"");
        Raw("<svg").Raw(size).Raw(label.Length == 0 ? " aria-hidden=\"true\"" : "").Raw(label.Length == 0 ? svg[4..].Replace(" role=\"img\" aria-label=\"\"", "", StringComparison.Ordinal) : svg[4..]);
    }
}
