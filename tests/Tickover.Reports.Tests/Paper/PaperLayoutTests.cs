using CsCheck;
using Tickover.Reports.Paper;
using Tickover.Reports.Paper.Pdf;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.Tests.Paper;

/// <summary>Nothing cut off, nothing on anything else, whatever is written.</summary>
public sealed class PaperLayoutTests
{
    private const string Unbroken = "Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaftsvorstandssitzungssaaltürschlüsselanhänger";

    private static readonly string[] Nasty =
    [
        Unbroken, "<b>bold</b> & <script>alert(1)</script>", "=HYPERLINK(\"x\";\"y\")", "{{7*7}} ${x} %s", "\u202Ereversed\u202C and \u2066isolated\u2069", "שלום עולם", "مرحبا بالعالم",
        "车辆 🚗 \uD83D", "a\u0000b\u0007c", "e\u0301te\u0301", new string('W', 400), "", "   ", "line one\nline two\r\nline three", "tab\tseparated", "-+@cmd|' /C calc'!A0",
    ];

    [Theory]
    [InlineData(PaperSize.A4)]
    [InlineData(PaperSize.Letter)]
    public void One_of_everything_keeps_to_the_margins(PaperSize size)
    {
        PaperShop.AssertClean(PaperShop.Write(PaperShop.Document(PaperShop.Everything()), size));
    }

    [Theory]
    [InlineData(PaperSize.A4)]
    [InlineData(PaperSize.Letter)]
    public void Whatever_people_type_does_no_harm(PaperSize size)
    {
        var blocks = Nasty.SelectMany(n => new Block[]
        {
            new Heading(2, n), Paragraph.Of(n), new Items([Prose.Of(n)]), new Facts([new Fact(n, Prose.Of(n))]),
            new Table(n, [new Column(n), Column.OfFigures(n), new Column("What")], [[Prose.Marked(Severity.Unsafe, "Unsafe"), Prose.Bold(n), Prose.Of(n)]]),
            new Callout(n, [Paragraph.Of(n)]), new Photos([new Photo(PaperShop.Jpeg, Prose.Of(n), [new PhotographMark(double.NaN, -3, 7, 0.5, n)])]),
            new Signatures([new SignatureLine(n, n), new SignatureLine(n, n), new SignatureLine(n, n)]), new SideBySide([Paragraph.Of(n)], [Paragraph.Of(n)]),
        });
        var document = PaperShop.Document([new Masthead(Unbroken, Unbroken, [Unbroken, Unbroken]), .. blocks]);

        PaperShop.AssertClean(PaperShop.Write(document with { Title = Nasty[1], Foot = Unbroken + Unbroken, Author = Nasty[4] }, size));
    }

    [Fact]
    public void What_no_typeface_has_is_seen_and_told()
    {
        var text = PaperShop.Text(PaperShop.Write(PaperShop.Document(Paragraph.Of("Car of שם, kept"))));

        Assert.Contains("Car of ??, kept", text, StringComparison.Ordinal);
        Assert.Contains("2 characters of this document are in no typeface", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Long_table_has_its_head_on_every_page()
    {
        var rows = Enumerable.Range(1, 900).Select(i => (IReadOnlyList<Prose>)[Prose.Of($"row{i}"), Prose.Of("3.6 kg/h")]).ToList();
        var file = PaperShop.Write(PaperShop.Document(new Table("Long", [new Column("Headofrows"), Column.OfFigures("Figure")], rows)));
        var words = PaperShop.Words(file);
        var pages = PaperShop.Pages(file);

        Assert.InRange(pages, 20, 40);
        Assert.Equal(pages, words.Where(w => w.Word is "Headofrows").Select(w => w.Page).Distinct().Count());
        Assert.Equal<IEnumerable<string>>([.. rows.Select(r => r[0].Text)], [.. words.Select(w => w.Word).Where(w => w.StartsWith("row", StringComparison.Ordinal))]);
        Assert.Contains($"Page {pages} of {pages}", PaperShop.Text(file), StringComparison.Ordinal);
    }

    [Fact]
    public void A_cell_longer_than_a_page_is_carried_over()
    {
        var endless = string.Join(' ', Enumerable.Range(1, 3000).Select(i => $"w{i}"));
        var file = PaperShop.Write(PaperShop.Document(
            new Table("Endless", [new Column("What"), new Column("Which")], [[Prose.Of("one"), Prose.Of(endless)]]), new Callout("Endless", [Paragraph.Of(endless)]), new SideBySide([Paragraph.Of(endless)], [Paragraph.Of(endless)]),
            new Together([Paragraph.Of(endless)])));

        PaperShop.AssertClean(file);
        Assert.Equal(5, PaperShop.Words(file).Count(w => w.Word is "w3000"));
    }

    [Fact]
    public void One_sheet_says_what_it_leaves_out()
    {
        var rows = Enumerable.Range(1, 300).Select(i => (IReadOnlyList<Prose>)[Prose.Of($"row{i}"), Prose.Of("x")]).ToList();
        var file = PaperShop.Write(PaperShop.Document(new Table("Long", [new Column("Head"), new Column("Figure")], rows)) with { OneSheet = true });
        var shown = PaperShop.Words(file).Count(w => w.Word.StartsWith("row", StringComparison.Ordinal));

        Assert.Equal(1, PaperShop.Pages(file));
        Assert.Contains($"This sheet is full: {300 - shown} more entries are in the workshop's record only.", PaperShop.Text(file), StringComparison.Ordinal);
        PaperShop.AssertClean(file);
    }

    [Fact]
    public void Several_threads_write_at_once()
    {
        Parallel.For(0, 8, _ => Assert.Equal(2, PaperShop.Pages(PaperShop.Write(PaperShop.Document(PaperShop.Everything())))));
    }

    [Fact]
    public void Pages_hold_every_piece_once_in_order_and_none_below_the_foot()
    {
        const double height = 100;
        Gen.Select(Gen.Double[1, 99], Gen.Double[0, 20], Gen.Bool, Gen.Bool).Array[0, 60].Sample(rows =>
        {
            var pieces = rows.Select(r => new Piece(r.Item1, (_, _, _) => { }) { Before = r.Item2, WithNext = r.Item3, NewPage = r.Item4 && r.Item1 > 90 }).ToList();

            var pages = new PageFlow(height).Place(pieces);

            Assert.Equal(pieces, pages.SelectMany(p => p.Select(x => x.Piece)));
            Assert.All(pages, page => Assert.All(page, x => Assert.InRange(x.Top + x.Piece.Height, 0, height + 1e-9)));
            Assert.All(pages, page => Assert.All(page.Skip(1).Zip(page), pair => Assert.True(pair.First.Top >= pair.Second.Top + pair.Second.Piece.Height - 1e-9)));
        });
    }

    [Fact]
    public void Columns_share_a_width_and_never_more()
    {
        Gen.Select(Gen.Double[1, 2000], Gen.Double[0, 1]).Array[1, 14].Sample(columns =>
        {
            var whole = columns.Select(c => c.Item1).ToArray();
            var widths = ColumnWidths.Shared(whole, [.. columns.Select(c => c.Item1 * c.Item2)], 500);

            Assert.All(widths, w => Assert.True(w > 0));
            Assert.InRange(widths.Sum(), 0, 500 + 1e-6);
        });
    }
}
