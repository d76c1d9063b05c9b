using System.Text;
using Tickover.Reports.Fonts;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.Paper.Pdf;

/// <summary>Sets running text in lines. Nothing is ever wider than its column: a word that is too long is broken.</summary>
internal sealed class Setter
{
    // Room between two sums of the same widths
    private const double Tolerance = 0.01;

    // A mark is as high as a capital and stands a little off its word
    private const double MarkWidth = 0.82;

    // "kg/h" and "by-pass" stay whole
    private const int LongBeforeBreak = 5;

    /// <summary>Characters that no typeface here has; each stands as "?" where it was met.</summary>
    internal HashSet<Rune> Missing { get; } = [];

    /// <summary>Breaks text into lines.</summary>
    internal IReadOnlyList<SetLine> Lines(Prose prose, TextLook look, double width)
    {
        var line = new LineUnderWay(look);
        List<SetLine> lines = [];
        foreach (var word in Words(prose, look))
        {
            if (word.NewLine || (!line.IsEmpty && line.Width + (word.Spaced ? line.Space : 0) + word.Width > width + Tolerance))
            {
                lines.Add(line.Done());
                line = new LineUnderWay(look);
            }

            foreach (var piece in word.Width <= width + Tolerance ? [word] : Broken(word, look, width))
            {
                if (!line.IsEmpty && piece != word)
                {
                    lines.Add(line.Done());
                    line = new LineUnderWay(look);
                }

                line.Add(piece);
            }
        }

        lines.Add(line.Done());
        return lines;
    }

    /// <summary>Width without any break, and width of the longest word, pt.</summary>
    internal (double Whole, double Word) Widths(Prose prose, TextLook look)
    {
        var (whole, here, longest) = (0.0, 0.0, 0.0);
        var space = new LineUnderWay(look).Space;
        foreach (var word in Words(prose, look))
        {
            here = word.NewLine ? word.Width : here + (word.Spaced && here > 0 ? space : 0) + word.Width;
            (whole, longest) = (Math.Max(whole, here), Math.Max(longest, word.Width));
        }

        return (whole, longest);
    }

    private List<Word> Words(Prose prose, TextLook look)
    {
        List<Word> words = [];
        var word = new Word();
        foreach (var run in prose.Runs)
        {
            var face = run.Bold || look.Bold ? Typeface.Bold : run.Italic ? Typeface.Italic : Typeface.Regular;
            if (run.Mark is { } mark)
            {
                // The mark stays with its word
                word.Parts.Add(new Glyphs("", face, 0, MarkWidth * look.Size + FontShelf.Of(face).AdvanceOf(' ') * look.Size) { Mark = mark });
            }

            foreach (var rune in run.Text.EnumerateRunes())
            {
                if (rune.Value is ' ' or '\n')
                {
                    word = AfterSpace(words, word, rune.Value == '\n');
                    continue;
                }

                Append(word, rune, face, look.Size, run.Mark);
                if (MayBreakAfter(rune.Value) && word.Parts[^1].Text.Length > LongBeforeBreak)
                {
                    words.Add(word);
                    word = new Word();
                }
            }
        }

        if (word.Parts.Count > 0)
        {
            words.Add(word);
        }

        return words;
    }

    // Several spaces are one, an empty line is a line, and no line begins with a space
    private static Word AfterSpace(List<Word> words, Word word, bool newLine)
    {
        if (word.Parts.Count == 0 && !(newLine && word.NewLine))
        {
            return word with { Spaced = true, NewLine = word.NewLine || newLine };
        }

        words.Add(word);
        return new Word { Spaced = true, NewLine = newLine };
    }

    private static bool MayBreakAfter(int character) => character is '-' or '/' or '\u2013' or '\u2014';

    private void Append(Word word, Rune rune, Typeface wanted, double size, Severity? colour)
    {
        var face = FontShelf.For(rune.Value, wanted);
        if (face is null)
        {
            Missing.Add(rune);
        }

        var text = face is null ? FontShelf.Missing : rune.ToString();
        var advance = FontShelf.Of(face ?? wanted).AdvanceOf(face is null ? '?' : rune.Value) * size;
        var last = word.Parts.Count > 0 ? word.Parts[^1] : null;
        if (last is not null && last.Face == (face ?? wanted) && last.Mark is null && last.Colour == colour)
        {
            word.Parts[^1] = last with { Text = last.Text + text, Width = last.Width + advance };
        }
        else
        {
            word.Parts.Add(new Glyphs(text, face ?? wanted, 0, advance) { Colour = colour });
        }
    }

    private static IEnumerable<Word> Broken(Word word, TextLook look, double width)
    {
        var piece = new Word { Spaced = word.Spaced };
        foreach (var part in word.Parts)
        {
            foreach (var rune in part.Text.EnumerateRunes())
            {
                var advance = FontShelf.Of(part.Face).AdvanceOf(rune.Value) * look.Size;
                if (piece.Parts.Count > 0 && piece.Width + advance > width)
                {
                    yield return piece;
                    piece = new Word();
                }

                piece.Parts.Add(part with { Text = rune.ToString(), Width = advance });
            }
        }

        yield return piece;
    }
}
