using Tickover.Reports.Fonts;

namespace Tickover.Reports.Paper.Pdf;

/// <summary>A line while it is being filled: neighbours of one typeface become one text, so that it can be searched and copied.</summary>
internal sealed class LineUnderWay(TextLook look)
{
    private readonly List<Glyphs> _parts = [];

    internal double Width { get; private set; }

    internal bool IsEmpty => _parts.Count == 0;

    internal double Space { get; } = FontShelf.Of(Typeface.Regular).AdvanceOf(' ') * look.Size;

    internal void Add(Word word)
    {
        var gap = word.Spaced && !IsEmpty;
        foreach (var part in word.Parts)
        {
            Join(part, gap);
            gap = false;
        }
    }

    internal SetLine Done() => new(_parts, Width);

    private void Join(Glyphs part, bool gap)
    {
        if (gap)
        {
            Width += Space;
        }

        if (_parts.Count > 0 && _parts[^1] is { Mark: null } last && last.Face == part.Face && last.Colour == part.Colour && part.Mark is null)
        {
            // All our typefaces have the same space
            _parts[^1] = last with { Text = last.Text + (gap ? " " : "") + part.Text, Width = Width + part.Width - last.X };
        }
        else
        {
            _parts.Add(part with { X = Width });
        }

        Width += part.Width;
    }
}
