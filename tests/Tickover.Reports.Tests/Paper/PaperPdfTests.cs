using Tickover.Reports.Paper;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.Tests.Paper;

/// <summary>What others read from our PDF: poppler its text, fonts and edges, zbar its square code.</summary>
public sealed class PaperPdfTests
{
    [Fact]
    public void Text_can_be_read_in_order()
    {
        var text = PaperShop.Text(PaperShop.Write(PaperShop.Document(PaperShop.Everything())));

        var at = -1;
        foreach (var words in new[]
        {
            "Your Larkfield Tern 2800", "You told us:", "λ 0.90 ±0.02, ½ turn, −3 °C → +4 °C, ≤ 10 mm", "What we found", "Unsafe", "Soon", "Watch",
            "A picture", "The hose as found.", "How to start her", "1. Cold: starter lever right out.", "Idle speed", "Stop and call us if",
            "The record of this visit:", "J. Marsh", "Page 2 of 2",
        })
        {
            var next = text.IndexOf(words, at + 1, StringComparison.Ordinal);
            Assert.True(next > at, $"'{words}' is not after what stands before it in: {text}");
            at = next;
        }
    }

    [Fact]
    public void Every_font_is_in_the_file_cut_down_and_readable()
    {
        var fonts = PaperShop.Run("pdffonts", PaperShop.Write(PaperShop.Document(PaperShop.Everything()))).Split('\n', StringSplitOptions.RemoveEmptyEntries)[2..];

        // Columns emb, sub, uni
        Assert.Equal(4, fonts.Length);
        Assert.All(fonts, f => Assert.Matches(@"Noto Sans.*\byes\s+yes\s+yes\b", f));
    }

    [Fact]
    public void Properties_say_what_it_is_and_in_which_language()
    {
        var file = PaperShop.Write(PaperShop.Document(PaperShop.Everything()));
        var info = PaperShop.Run("pdfinfo", file);

        Assert.Matches(@"Title:\s+Your Larkfield Tern 2800", info);
        Assert.Matches(@"Author:\s+Saltmarsh Motor House", info);
        Assert.Contains("/Lang", File.ReadAllText(file, System.Text.Encoding.Latin1), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(PaperSize.A4, "595.276 x 841.89 pts (A4)")]
    [InlineData(PaperSize.Letter, "612 x 792 pts (letter)")]
    public void Paper_has_its_size(PaperSize size, string shown)
    {
        Assert.Contains(shown, PaperShop.Run("pdfinfo", PaperShop.Write(PaperShop.Document(PaperShop.Everything()), size)), StringComparison.Ordinal);
    }

    [Fact]
    public void Square_code_is_read_from_the_printed_page()
    {
        var file = PaperShop.Write(PaperShop.Document(PaperShop.Everything()));
        var picture = Path.ChangeExtension(file, null);
        PaperShop.Run("pdftoppm", "-r", "150", "-png", file, picture);

        var read = PaperShop.Run("zbarimg", "--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", picture + "-2.png");

        Assert.Equal("https://saltmarsh.example/visits/17", read.Trim());
    }
}
