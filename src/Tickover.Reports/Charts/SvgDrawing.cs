using System.Globalization;
using System.Text;

namespace Tickover.Reports.Charts;

/// <summary>Draws as SVG text. Colours of the theme are CSS custom properties; no inline style, no script, nothing fetched.</summary>
internal sealed class SvgDrawing : IDrawing
{
    private readonly StringBuilder _body = new(capacity: 1 << 14);
    private readonly string _prefix;
    private int _clips;

    /// <summary>Starts a drawing.</summary>
    /// <param name="prefix">Begins every id inside, so that several drawings live on one page; letters, digits and hyphens.</param>
    internal SvgDrawing(string prefix) => _prefix = prefix;

    public void Path(IEnumerable<Polyline> lines, Look look)
    {
        var start = _body.Length;
        _body.Append("<path d=\"");
        var before = _body.Length;
        foreach (var line in lines)
        {
            SvgPath.Append(_body, line);
        }

        if (_body.Length == before)
        {
            _body.Length = start;
            return;
        }

        _body.Append('"');
        if (look.Fill is not null)
        {
            _body.Append(" fill-rule=\"evenodd\"");
        }

        Finish(look);
    }

    public void Line(ChartPoint from, ChartPoint to, Look look)
    {
        _body.Append("<path d=\"");
        SvgPath.Append(_body, new Polyline([from, to], Closed: false));
        _body.Append('"');
        Finish(look);
    }

    public void Circle(ChartPoint centre, double radius, Look look)
    {
        _body.Append("<circle").Attribute("cx", centre.X).Attribute("cy", centre.Y).Attribute("r", radius);
        Finish(look);
    }

    public void Plate(Box box, double radius, Look look)
    {
        _body.Append("<rect").Attribute("x", box.Left).Attribute("y", box.Top)
            .Attribute("width", box.Width).Attribute("height", box.Height);
        if (radius > 0)
        {
            _body.Attribute("rx", radius);
        }

        Finish(look);
    }

    public void Text(string text, ChartPoint at, Lettering lettering)
    {
        _body.Append("<text").Attribute("x", at.X).Attribute("y", at.Y).Attribute("font-size", lettering.Size);
        if (lettering.Bold)
        {
            _body.Append(" font-weight=\"700\"");
        }

        if (lettering.Anchor != Anchor.Start)
        {
            _body.Attribute("text-anchor", lettering.Anchor == Anchor.Middle ? "middle" : "end");
        }

        _body.Attribute("fill", Colour(lettering.Paint));
        if (lettering.Halo is { } halo)
        {
            _body.Append(" paint-order=\"stroke\" stroke-width=\"4\" stroke-linejoin=\"round\"").Attribute("stroke", Colour(halo));
        }

        // The line break parts the words of neighbouring texts for whoever reads them out
        _body.Append('>').Escaped(text).Append("</text>\n");
    }

    public void MarksHere() => _body.Append("<g class=\"marks\"></g>");

    public IDisposable ClippedTo(IReadOnlyList<Polyline> areas)
    {
        var id = string.Create(CultureInfo.InvariantCulture, $"{_prefix}-clip{++_clips}");
        _body.Append("<clipPath").Attribute("id", id).Append("><path clip-rule=\"evenodd\" d=\"");
        foreach (var area in areas)
        {
            SvgPath.Append(_body, area);
        }

        _body.Append("\"/></clipPath><g").Attribute("clip-path", $"url(#{id})").Append('>');
        return new Closing(this, "</g>");
    }

    public IDisposable Part(PartMark mark)
    {
        var element = mark.Address is null ? "g" : "a";
        _body.Append('<').Append(element).Attribute("class", "part").Attribute("data-part", mark.Key);
        if (mark.Address is { } address)
        {
            _body.Attribute("href", address);
        }

        if (mark.Focusable)
        {
            _body.Attribute("aria-label", mark.Name);
            _ = mark.Address is null
                ? _body.Append(" role=\"button\" tabindex=\"0\"").Attribute("aria-pressed", mark.Selected ? "true" : "false")
                : _body.Append(mark.Selected ? " aria-current=\"true\"" : "");
        }
        else
        {
            _body.Append(" aria-hidden=\"true\"").Append(mark.Address is null ? "" : " tabindex=\"-1\"");
        }

        _body.Append('>');
        return new Closing(this, $"</{element}>");
    }

    /// <summary>The whole drawing.</summary>
    /// <param name="frame">Size and what a screen reader says.</param>
    /// <returns>One svg element.</returns>
    internal string ToSvg(SvgFrame frame)
    {
        var svg = new StringBuilder(_body.Length + 2048);
        svg.Append("<svg xmlns=\"http://www.w3.org/2000/svg\"")
            .Attribute("viewBox", string.Create(CultureInfo.InvariantCulture, $"{frame.Left:0.#} {frame.Top:0.#} {frame.Width:0.#} {frame.Height:0.#}"))
            .Attribute("class", frame.ClassName).Attribute("role", frame.Role).Attribute("aria-label", frame.Label);
        foreach (var (name, value) in frame.Data)
        {
            svg.Attribute($"data-{name}", value);
        }

        svg.Append(" font-family=\"var(--font)\"><defs>");
        SvgHatches.Append(svg, _prefix);
        return svg.Append("</defs>").Append(_body).Append("</svg>").ToString();
    }

    private void Finish(Look look)
    {
        _body.Attribute("fill", look.Fill is { } fill ? Colour(fill) : "none");
        if (look.Stroke is { } stroke)
        {
            _body.Attribute("stroke", Colour(stroke)).Append(" stroke-linejoin=\"round\"");
            _ = look.Width > 0 ? _body.Attribute("stroke-width", look.Width) : _body.Append(" stroke-width=\"var(--stroke)\"");
        }

        if (look.Dashes is var (dash, gap))
        {
            _body.Attribute("stroke-dasharray", string.Create(CultureInfo.InvariantCulture, $"{dash} {gap}"));
        }

        if (look.Opacity < 1)
        {
            _body.Attribute("opacity", look.Opacity);
        }

        _body.Append("/>");
    }

    private string Colour(Paint paint) => paint.Kind switch
    {
        PaintKind.Theme => $"var(--{paint.Name})",
        PaintKind.Hatch => $"url(#{_prefix}-{paint.Name})",
        _ => paint.Name,
    };

    private sealed class Closing(SvgDrawing drawing, string tag) : IDisposable
    {
        public void Dispose() => drawing._body.Append(tag);
    }
}
