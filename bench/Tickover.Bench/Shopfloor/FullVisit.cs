using Microsoft.Extensions.DependencyInjection;
using SkiaSharp;
using Tickover.Workshop.Visits;

namespace Tickover.Bench.Shopfloor;

/// <summary>A visit as full as the largest one asked for.</summary>
internal static class FullVisit
{
    private const int Readings = 500;
    private const int Photographs = 200;
    private const int Findings = 40;
    private const int PictureWidth = 1600;
    private const int PictureHeight = 1200;

    public static async Task<Id<Visit>> SeedAsync(IServiceProvider services)
    {
        var record = services.GetRequiredService<IRecord>();
        var pictures = services.GetRequiredService<IPictures>();
        var car = new CustomerCar { Name = "Larkfield Tern 2800", Slug = "full" };
        var visit = new Visit { Car = car.Id, ArrivedOn = new DateOnly(2026, 11, 12), Complaint = "Everything at once." };
        var findings = Enumerable.Range(0, Findings).Select(k => new Finding { Visit = visit.Id, Stage = Stage.Storage, What = $"Finding {k}", Severity = (Severity)(k % 3) }).ToList();
        await KeepAsync(record, visit, [new House { Id = House.TheOne, Name = "Saltmarsh Motor House" }, car, visit, .. findings]);
        await KeepAsync(record, visit, [.. Enumerable.Range(0, Readings).Select(k => Reading(visit, k))]);
        var file = Picture();
        var photographs = new List<RecordItem>();
        for (var k = 0; k < Photographs; k++)
        {
            var id = Id.New<Photograph>();
            var intake = await pictures.TakeInAsync(id, new MemoryStream(file));
            photographs.Add(new Photograph
            {
                Id = id,
                Visit = visit.Id,
                Stage = Stage.Storage,
                Finding = k < Findings ? findings[k].Id : null,
                Caption = $"Picture {k}",
                Hash = intake.Hash,
                Width = intake.Width,
                Height = intake.Height,
            });
        }

        await KeepAsync(record, visit, photographs);
        return visit.Id;
    }

    private static Reading Reading(Visit visit, int k) => new()
    {
        Visit = visit.Id,
        Stage = Stage.Balance,
        Measure = "idleAirflow",
        Place = new Place(PlaceKind.Barrel, $"{(k % 6) + 1}"),
        Moment = k % 2 == 0 ? Moment.AsFound : Moment.AsLeft,
        Typed = "3.9 kg/h",
        Si = 3.9 / 3600,
        TakenAt = new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero).AddMinutes(k),
    };

    private static async Task KeepAsync(IRecord record, Visit visit, IReadOnlyList<RecordItem> items)
    {
        var outcome = await record.KeepAsync(new Act { Key = Guid.NewGuid(), Items = items, Words = "seed", Visit = visit.Id, Device = "bench" });
        if (!outcome.IsKept)
        {
            throw new InvalidOperationException(outcome.Words);
        }
    }

    // Noise over a gradient, so that it is no easier to pack than a photograph.
    private static byte[] Picture()
    {
        using var bitmap = new SKBitmap(PictureWidth, PictureHeight);
        var random = new Random(1);
        for (var y = 0; y < PictureHeight; y++)
        {
            for (var x = 0; x < PictureWidth; x++)
            {
                var noise = random.Next(40);
                bitmap.SetPixel(x, y, new SKColor((byte)(noise + (x / 10)), (byte)(noise + (y / 8)), (byte)(noise + 60)));
            }
        }

        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 85);
        return data.ToArray();
    }
}
