using System.Diagnostics;
using SkiaSharp;
using Tickover.Reports.HandOver;
using Tickover.Reports.Paper;
using Tickover.Workshop.Demonstration;
using Tickover.Workshop.Visits;

namespace Tickover.Bench;

/// <summary>How long an account of 30 pages takes: the demonstration's largest visit with photographs of 1,600 by 1,200 pixels. Asked: under 5 s.</summary>
internal static class PaperStudy
{
    private const int Photographs = 56;
    private const int Runs = 5;

    public static int Run(string samples, string? output)
    {
        var record = Visit(samples);
        var jpegs = Enumerable.Range(0, Photographs).Select(Jpeg).ToList();
        var at = 0;
        var byPhotograph = record.Photographs.ToDictionary(p => p.Id, _ => jpegs[at++ % Photographs]);
        var settings = new HandOverSettings { On = new DateOnly(2026, 12, 2), Address = "https://saltmarsh.example/visits/412", Picture = id => byPhotograph[id] };
        for (var run = 1; run <= Runs; run++)
        {
            Measure(run, record, settings, output);
        }

        return 0;
    }

    private static void Measure(int run, VisitRecord record, HandOverSettings settings, string? output)
    {
        var clock = Stopwatch.StartNew();
        var document = HandOverDocument.Of(record, settings);
        var told = clock.Elapsed;
        using var pdf = new MemoryStream();
        PaperPdf.Write(document, PaperSize.A4, pdf);
        var printed = clock.Elapsed;
        var html = PaperHtml.Write(document);
        var written = clock.Elapsed;
        Console.WriteLine($"run {run}{(run == 1 ? ", cold" : "")}: told {told.TotalMilliseconds:0} ms, PDF {(printed - told).TotalMilliseconds:0} ms ({pdf.Length / 1024:#,0} KB), HTML {(written - printed).TotalMilliseconds:0} ms ({html.Length / 1024:#,0} KB)");
        if (output is not null)
        {
            File.WriteAllBytes(output + ".pdf", pdf.ToArray());
            File.WriteAllText(output + ".html", html);
        }
    }

    private static VisitRecord Visit(string samples)
    {
        string Sample(string name) => File.ReadAllText(Path.Combine(samples, name + ".car.json"));
        var acts = DemonstrationWorkshop.Acts(new DemonstrationDocuments(Sample("tern-2800"), Sample("osprey-v8"), Sample("gannet-1500")), new DateOnly(2026, 12, 2));
        var items = acts.SelectMany((a, n) => a.Items.Select(i => i with { Kept = n + 1, KeptBy = a.Person })).GroupBy(i => i.Key).Select(g => g.Last() with { Kept = g.First().Kept }).OrderBy(i => i.Kept).ToList();
        var visit = items.OfType<Visit>().MaxBy(v => items.OfType<Reading>().Count(r => r.Visit == v.Id))!;
        IReadOnlyList<T> Of<T>()
            where T : RecordItem, IOfVisit => [.. items.OfType<T>().Where(i => i.Visit == visit.Id)];
        var findings = Of<Finding>();
        return new VisitRecord
        {
            Visit = visit with { Number = 412 },
            Car = items.OfType<CustomerCar>().Single(c => c.Id == visit.Car),
            Workshop = new WorkshopRecord(items.OfType<House>().Single(), [.. items.OfType<Person>()], [.. items.OfType<Instrument>()]),
            Descriptions = [.. items.OfType<CarDescription>().Where(d => d.Car == visit.Car)],
            Readings = Of<Reading>(),
            Findings = findings,
            Parts = Of<PartLine>(),
            Times = Of<TimeLine>(),
            Approvals = Of<Approval>(),
            Notes = Of<WorkNote>(),
            SignOffs = Of<SignOff>(),
            Cautions = Of<CautionSeen>(),
            Photographs = [.. Enumerable.Range(0, Photographs).Select(i => new Photograph
            {
                Caption = $"Photograph {i + 1} of the bench, as drawn by the computer",
                Finding = i < findings.Count ? findings[i].Id : null,
                Marks = i % 2 == 0 ? [new PhotographMark(0.25, 0.2, 0.55, 0.5, "look here")] : [],
            })],
        };
    }

    // Soft blotches and grain, so that the file is about as large as a photograph's
    private static byte[] Jpeg(int seed)
    {
        using var bitmap = new SKBitmap(1600, 1200);
        using var canvas = new SKCanvas(bitmap);
        var chance = new Random(seed);
        canvas.Clear(new SKColor(0x70, 0x78, 0x7a));
        using var paint = new SKPaint { IsAntialias = true };
        for (var i = 0; i < 4000; i++)
        {
            var grey = (byte)chance.Next(40, 220);
            paint.Color = new SKColor(grey, grey, (byte)Math.Min(grey + 12, 255), 90);
            canvas.DrawCircle(chance.Next(1600), chance.Next(1200), chance.Next(4, 60), paint);
        }

        using var image = SKImage.FromBitmap(bitmap);
        using var data = image.Encode(SKEncodedImageFormat.Jpeg, 85);
        return data.ToArray();
    }
}
