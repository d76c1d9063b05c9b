using System.Diagnostics;
using System.Globalization;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using Tickover.Web;
using Tickover.Workshop.Visits;

namespace Tickover.Bench.Shopfloor;

/// <summary>The app under a full workshop: a visit of 500 readings and 200 photographs, and 20 tablets that enter readings at once.</summary>
internal static class ShopfloorStudy
{
    private const int Tablets = 20;
    private const int EntriesEach = 50;
    private const int Looks = 20;

    public static async Task<int> RunAsync()
    {
        var folder = Directory.CreateTempSubdirectory("tickover-shopfloor-").FullName;
        await using var app = await WebApp.BuildAsync(["--Logging:LogLevel:Default=Error"], new WebAppOptions { DataFolder = folder, Address = "http://127.0.0.1:0" });
        await app.StartAsync();
        var address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First(a => a.StartsWith("http://", StringComparison.Ordinal));
        using var client = new HttpClient { BaseAddress = new Uri(address) };
        var visit = await FullVisit.SeedAsync(app.Services);
        await PageAsync(client, $"/visits/{visit}", "visit page, 500 readings, 200 photographs");
        await PageAsync(client, $"/visits/{visit}/balance", "its stage page, Balance");
        await PageAsync(client, $"/visits/{visit}/storage", "its stage page with the photographs, Storage");
        await PageAsync(client, "/", "shop page");
        await FirstPaint.MeasureAsync(address, $"/visits/{visit}");
        var kept = await TabletsAsync(address, visit);
        var record = (await app.Services.GetRequiredService<IRecord>().VisitAsync(visit))!;
        var there = record.Readings.Count(r => r.Note.StartsWith("tablet", StringComparison.Ordinal));
        var doubles = record.Readings.Where(r => r.Note.StartsWith("tablet", StringComparison.Ordinal)).GroupBy(r => r.Note, StringComparer.Ordinal).Count(g => g.Count() > 1);
        Console.WriteLine($"entries acknowledged {kept}, in the record {there}, double {doubles}");
        await app.StopAsync();
        Directory.Delete(folder, recursive: true);
        return kept == Tablets * EntriesEach && there == kept && doubles == 0 ? 0 : 1;
    }

    private static async Task PageAsync(HttpClient client, string address, string what)
    {
        var times = new List<double>();
        var length = 0;
        for (var k = 0; k <= Looks; k++)
        {
            var watch = Stopwatch.StartNew();
            length = (await client.GetByteArrayAsync(address)).Length;
            times.Add(watch.Elapsed.TotalMilliseconds);
        }

        var first = times[0];
        times.RemoveAt(0);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: first {first:0} ms, then median {Percentile(times, 0.5):0} ms, p95 {Percentile(times, 0.95):0} ms, {length / 1024.0:0} KiB"));
    }

    private static async Task<int> TabletsAsync(string address, Id<Visit> visit)
    {
        var times = new List<double>[Tablets];
        var watch = Stopwatch.StartNew();
        var kept = await Task.WhenAll(Enumerable.Range(0, Tablets).Select(t => Task.Run(() => TabletAsync(address, visit, t, times[t] = []))));
        var all = times.SelectMany(t => t).ToList();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{Tablets} tablets, {EntriesEach} entries each, one after the other without a pause: median {Percentile(all, 0.5):0} ms, p95 {Percentile(all, 0.95):0} ms, worst {all.Max():0} ms, {all.Count / watch.Elapsed.TotalSeconds:0} entries a second"));
        return kept.Sum();
    }

    private static async Task<int> TabletAsync(string address, Id<Visit> visit, int tablet, List<double> times)
    {
        using var client = new HttpClient { BaseAddress = new Uri(address) };
        var kept = 0;
        for (var k = 0; k < EntriesEach; k++)
        {
            var key = Guid.NewGuid().ToString();
            using var request = new HttpRequestMessage(HttpMethod.Post, $"/visits/{visit}/balance/readings")
            {
                Content = new FormUrlEncodedContent(new Dictionary<string, string>(StringComparer.Ordinal)
                {
                    ["key"] = key,
                    ["measure"] = "idleAirflow",
                    ["moment"] = "Working",
                    ["v:barrel:1"] = "3.9",
                    ["note"] = $"tablet {tablet} entry {k}",
                }),
            };
            request.Headers.Add("Tickover-Outbox", key);
            request.Headers.Add("Origin", address);
            request.Headers.Add("Accept", "application/json");
            var watch = Stopwatch.StartNew();
            using var answer = await client.SendAsync(request);
            times.Add(watch.Elapsed.TotalMilliseconds);
            kept += answer.IsSuccessStatusCode ? 1 : 0;
        }

        return kept;
    }

    private static double Percentile(List<double> values, double part)
    {
        var ordered = values.Order().ToList();
        return ordered[Math.Min(ordered.Count - 1, (int)Math.Ceiling(part * ordered.Count) - 1)];
    }
}
