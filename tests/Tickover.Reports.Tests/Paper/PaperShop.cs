using System.Diagnostics;
using Tickover.Reports.Charts;
using Tickover.Reports.Paper;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.Tests.Paper;

/// <summary>Documents to print, and the tools of poppler and zbar that read what was printed. An invented workshop.</summary>
internal static class PaperShop
{
    /// <summary>A picture of 4 by 3 pixels, grey, as a JPEG file.</summary>
    internal static readonly byte[] Jpeg = Convert.FromBase64String(
        "/9j/4AAQSkZJRgABAQEASABIAAD/2wBDAAMCAgICAgMCAgIDAwMDBAYEBAQEBAgGBgUGCQgKCgkICQkKDA8MCgsOCwkJDRENDg8QEBEQCgwSExIQEw8QEBD/wAALCAADAAQBAREA/8QAFAABAAAAAAAAAAAAAAAAAAAACf/EABQQAQAAAAAAAAAAAAAAAAAAAAD/2gAIAQEAAD8AVN//2Q==");

    // To look at the pages, set TICKOVER_KEEP_PAPER; else they go when the tests end
    private static readonly Lazy<string> Folder = new(() =>
    {
        var folder = Directory.CreateTempSubdirectory("tickover-paper-").FullName;
        if (Environment.GetEnvironmentVariable("TICKOVER_KEEP_PAPER") is null)
        {
            AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(folder, recursive: true);
        }

        return folder;
    });

    private static int _written;

    internal static PaperDocument Document(params Block[] blocks) => new()
    {
        Title = "Your Larkfield Tern 2800",
        Author = "Saltmarsh Motor House",
        Language = "en-GB",
        Foot = "Hand-over · Larkfield Tern 2800 · 2 December 2026",
        FileName = "hand-over",
        Blocks = blocks,
    };

    /// <summary>One of everything.</summary>
    internal static Block[] Everything() =>
    [
        new Masthead("Your Larkfield Tern 2800", "What was wrong, what we did, how to live with it", ["Saltmarsh Motor House", "12 November to 2 December 2026", "48,210 to 48,262 miles"]),
        new Paragraph(Prose.Of("You told us: ").ThenItalic("“The gauge lies.”").Then(" It does no more: λ 0.90 ±0.02, ½ turn, −3 °C → +4 °C, ≤ 10 mm.")) { Voice = Voice.Lead },
        new Heading(2, "What we found"),
        new Table("Findings", [new Column("How soon"), new Column("What"), new Column("What became of it")],
        [
            [Prose.Marked(Severity.Unsafe, "Unsafe"), Prose.Bold("Hose between the tanks perished, weeping"), Prose.Of("Replaced. Old piece in bag 1.")],
            [Prose.Marked(Severity.Soon, "Soon"), Prose.Bold("Right tank pitted under its pad,").Then(" 0.6 mm of 0.9 left"), Prose.Of("Relined with your approval.")],
            [Prose.Marked(Severity.Watch, "Watch"), Prose.Bold("Middle spindle has a little play"), Prose.Of("Left as it is.")],
        ]),
        new SideBySide(
            [new Heading(2, "A picture"), new Figure(Square, 300, 120, "A square with a word in it")],
            [new Heading(2, "What the needle means"), new Table("Needle", [new Column("Needle"), Column.OfFigures("In the tanks")], [[Prose.Of("F"), Prose.Of("50 L")], [Prose.Of("¼"), Prose.Of("16 L")]])]),
        new Photos([new Photo(Jpeg, Prose.Of("The hose as found."), [new PhotographMark(0.2, 0.2, 0.6, 0.6, "weeps here")]), new Photo(null, Prose.Of("A picture that was lost."), [])]),
        new Heading(2, "How to start her"),
        new Items([Prose.Of("Cold: starter lever right out."), Prose.Of("Hot: a third open.")]) { Numbered = true },
        new Facts([new Fact("Idle speed", Prose.Of("900 rpm")), new Fact("Fuel", Prose.Of("E5, fresh each spring"))]),
        new Callout("Stop and call us if", [Paragraph.Of("you smell petrol or see a drip; the throttle does not snap shut.")]),
        new QrLink("https://saltmarsh.example/visits/17", "The record of this visit:"),
        new Signatures([new SignatureLine("For the workshop", "J. Marsh, 2 December 2026"), new SignatureLine("Owner", "")]),
    ];

    internal static string Write(PaperDocument document, PaperSize size = PaperSize.A4)
    {
        var file = Path.Combine(Directory.CreateDirectory(Path.Combine(Folder.Value, Interlocked.Increment(ref _written).ToString(System.Globalization.CultureInfo.InvariantCulture))).FullName, "paper.pdf");
        using var stream = File.Create(file);
        PaperPdf.Write(document, size, stream);
        return file;
    }

    /// <summary>What poppler reads from a file, spaces of any kind made one.</summary>
    internal static string Text(string file) => string.Join(' ', Run("pdftotext", "-layout", file, "-").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    /// <summary>The same cell by cell, so that a sentence in a table is one.</summary>
    internal static string Cells(string file) => string.Join(' ', Run("pdftotext", "-raw", file, "-").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    internal static int Pages(string file) =>
        int.Parse(Run("pdfinfo", file).Split('\n').Single(l => l.StartsWith("Pages:", StringComparison.Ordinal))[6..].Trim(), System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>Runs a tool and gives what it said; fails with its own words where it does not end well.</summary>
    internal static string Run(string tool, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(tool, arguments) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false })!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        Assert.True(process.WaitForExit(30_000), $"{tool} did not end");
        Assert.True(process.ExitCode == 0, $"{tool} {string.Join(' ', arguments)}: {error.Result}");
        return output;
    }

    /// <summary>Words of every page with their boxes in pt, as poppler sees them.</summary>
    internal static IReadOnlyList<(int Page, string Word, Box Box)> Words(string file)
    {
        List<(int, string, Box)> words = [];
        var page = 0;
        foreach (var line in Run("pdftotext", "-bbox", file, "-").Split('\n').Select(l => l.Trim()))
        {
            page += line.StartsWith("<page", StringComparison.Ordinal) ? 1 : 0;
            if (line.StartsWith("<word", StringComparison.Ordinal))
            {
                var word = System.Xml.Linq.XElement.Parse(line);
                double At(string name) => double.Parse(word.Attribute(name)!.Value, System.Globalization.CultureInfo.InvariantCulture);
                words.Add((page, word.Value, new Box(At("xMin"), At("yMin"), At("xMax") - At("xMin"), At("yMax") - At("yMin"))));
            }
        }

        return words;
    }

    /// <summary>Fails where ink lies outside the margins or words lie on each other.</summary>
    internal static void AssertClean(string file)
    {
        foreach (var page in Words(file).GroupBy(w => w.Page))
        {
            var words = page.ToList();
            for (var i = 0; i < words.Count; i++)
            {
                for (var j = i + 1; j < words.Count; j++)
                {
                    // Boxes are as high as the type allows; lines set tight touch, words never lie across each other
                    if (Core(words[i].Box).Overlaps(Core(words[j].Box)))
                    {
                        Assert.Fail($"page {page.Key}: '{words[i].Word}' and '{words[j].Word}' lie on each other");
                    }
                }
            }
        }

        const int dotsPerInch = 50;
        var stem = Path.ChangeExtension(file, null);
        Run("pdftoppm", "-r", dotsPerInch.ToString(System.Globalization.CultureInfo.InvariantCulture), "-gray", file, stem);
        var edge = (int)((Reports.Paper.Pdf.PageShape.Margin - 2) * dotsPerInch / 72);
        Assert.All(Directory.GetFiles(Path.GetDirectoryName(file)!, "*.pgm"), f => AssertWhiteEdge(f, edge));
    }

    private static Box Core(Box box) => new(box.Left + 0.5, box.Top + box.Height * 0.3, Math.Max(box.Width - 1, 0.1), box.Height * 0.4);

    private static void AssertWhiteEdge(string file, int edge)
    {
        var bytes = File.ReadAllBytes(file);
        var header = System.Text.Encoding.ASCII.GetString(bytes, 0, 40).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        var (width, height) = (int.Parse(header[1], System.Globalization.CultureInfo.InvariantCulture), int.Parse(header[2], System.Globalization.CultureInfo.InvariantCulture));
        var start = bytes.Length - width * height;
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                var outside = x < edge || y < edge || x >= width - edge || y >= height - edge;
                if (outside && bytes[start + y * width + x] <= 250)
                {
                    Assert.Fail($"{Path.GetFileName(file)}: ink at {x}, {y} of {width} by {height}, outside the margin");
                }
            }
        }
    }

    private static void Square(IDrawing drawing)
    {
        drawing.Plate(new Box(10, 10, 280, 100), 6, new Look { Fill = Paint.Fuel, Stroke = Paint.MetalEdge, Width = 3 });
        using (drawing.ClippedTo([Polyline.Rectangle(new Box(20, 20, 60, 80))]))
        {
            drawing.Plate(new Box(0, 0, 300, 120), 0, Look.Filled(Paint.Hatched(Hatch.NoAnswer)));
        }

        drawing.Circle(new ChartPoint(200, 60), 12, Look.Outlined(Paint.Air, Paint.AirEdge));
        drawing.Text("left, 25 L", new ChartPoint(150, 70), new Lettering { Bold = true, Halo = Paint.Surface });
    }
}
