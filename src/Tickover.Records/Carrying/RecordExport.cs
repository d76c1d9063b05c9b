using System.IO.Compression;
using System.Text;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Tickover.Records.Model;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Carrying;

/// <summary>Writes a record, or one car of it, into a zip that other programs and people can read. PINs are never in it.</summary>
public static class RecordExport
{
    /// <summary>Writes the zip; it appears whole or not at all.</summary>
    /// <param name="store">The open record; others may go on writing to it.</param>
    /// <param name="path">The file; it must not be there yet.</param>
    /// <param name="car">The car to be carried alone; null for everything.</param>
    /// <param name="cancellation">Stops the work; then no file is left.</param>
    /// <returns>What is in it.</returns>
    /// <exception cref="RecordTroubleException">It could not be written, or there is no such car.</exception>
    public static async Task<ExportManifest> WriteAsync(RecordStore store, string path, Id<CustomerCar>? car, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(path);
        if (File.Exists(path) || Directory.Exists(path))
        {
            throw new RecordTroubleException($"{path} is there already and is left as it is. Name another file.");
        }

        var part = path + ".part";
        try
        {
            ExportManifest manifest;
            await using (var file = new FileStream(part, FileMode.Create, FileAccess.ReadWrite, FileShare.None))
            await using (var zip = new ZipArchive(file, ZipArchiveMode.Create))
            {
                manifest = await store.ReadAsync(context => FillAsync(context, zip, car, store.Clock, cancellation));
            }

            File.Move(part, path);
            return manifest;
        }
        catch (DirectoryNotFoundException fault)
        {
            throw new RecordTroubleException($"The folder of {path} is not there. Make it first.", fault);
        }
        catch (Exception fault) when (Trouble.IsAround(fault))
        {
            throw Trouble.Tell(fault, path);
        }
        finally
        {
            if (File.Exists(part))
            {
                File.Delete(part);
            }
        }
    }

    private static async Task<ExportManifest> FillAsync(RecordsContext context, ZipArchive zip, Id<CustomerCar>? car, TimeProvider clock, CancellationToken cancellation)
    {
        await using var snapshot = await Snapshot.BeginAsync(context, cancellation);
        var one = car is null ? null : await context.Set<CustomerCar>().AsNoTracking().FirstOrDefaultAsync(c => c.Id == car, cancellation)
            ?? throw new RecordTroubleException("There is no such car in the record.");
        var cargo = one is null ? await CargoReader.AllAsync(context, cancellation) : await CargoReader.CarAsync(context, one, cancellation);
        var stamp = await context.Stamps.AsNoTracking().SingleAsync(cancellation);
        var currency = (await context.Set<House>().AsNoTracking().FirstOrDefaultAsync(cancellation))?.Currency ?? new House().Currency;
        var entries = new ZipEntries(zip);
        await entries.TextAsync(Form.ReadMe, ReadMeText.Of(one, currency), cancellation);
        foreach (var kind in RecordKinds.All)
        {
            await entries.TextAsync(Form.Items(kind), Lines(cargo.Items[kind].Select(RecordKinds.Write)), cancellation);
            await entries.TextAsync(Form.Table(kind), ItemCsv.Text(kind, cargo.Items[kind]), cancellation);
        }

        await entries.TextAsync(Form.Journal, Lines(cargo.Acts.Select(a => JsonSerializer.Serialize(a, RecordKinds.Json))), cancellation);
        foreach (var (name, text) in RecordSchemas.All)
        {
            await entries.TextAsync(Form.Schema(name), text, cancellation);
        }

        var pictures = await PicturesAsync(context, cargo, entries, cancellation);
        var counts = new SortedDictionary<string, int>(RecordKinds.All.ToDictionary(k => k.Name, k => cargo.Items[k].Count, StringComparer.Ordinal), StringComparer.Ordinal) { ["acts"] = cargo.Acts.Count, ["pictures"] = pictures };
        var now = DateTimeOffset.FromUnixTimeSeconds(clock.GetUtcNow().ToUnixTimeSeconds());
        var manifest = new ExportManifest(Form.Name, Form.Version, stamp.Record, now, one?.Slug, cargo.Acts.Count == 0 ? 0 : cargo.Acts[^1].Number, counts, entries.Written);
        await new ZipEntries(zip).TextAsync(Form.Manifest, JsonSerializer.Serialize(manifest, Form.Json) + "\n", cancellation);
        return manifest;
    }

    // One item a line: programs read it as an array, people and version control as lines.
    private static string Lines(IEnumerable<string> json)
    {
        var text = new StringBuilder("[");
        var separator = "\n";
        foreach (var line in json)
        {
            text.Append(separator).Append(line);
            separator = ",\n";
        }

        return text.Append("\n]\n").ToString();
    }

    private static async Task<int> PicturesAsync(RecordsContext context, Cargo cargo, ZipEntries entries, CancellationToken cancellation)
    {
        var count = 0;
        foreach (var photograph in cargo.Of<Photograph>())
        {
            var picture = await context.Pictures.AsNoTracking().Where(p => p.Photograph == photograph.Key).Select(p => p.Whole).FirstOrDefaultAsync(cancellation);
            if (picture is not null)
            {
                await entries.PictureAsync(Form.Picture(photograph.Key), picture, cancellation);
                count++;
            }
        }

        return count;
    }
}
