using System.IO.Compression;
using Microsoft.EntityFrameworkCore;
using Tickover.Records.Keeping;
using Tickover.Records.Model;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Carrying;

/// <summary>Takes an export into a record: all of it in one transaction, or nothing.</summary>
public static class RecordImport
{
    /// <summary>Takes an export in.</summary>
    /// <param name="store">The open record.</param>
    /// <param name="path">The export.</param>
    /// <param name="cancellation">Stops the work; then nothing is taken in.</param>
    /// <returns>What was taken in, or why what is here contradicts it.</returns>
    /// <exception cref="RecordTroubleException">It is no export, newer than this program, cut short or changed; nothing was taken in.</exception>
    public static async Task<ImportReport> ReadAsync(RecordStore store, string path, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(path);
        if (!File.Exists(path))
        {
            throw new RecordTroubleException($"There is no file {path}. Name the export.");
        }

        try
        {
            await using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read);
            await using var zip = new ZipArchive(file, ZipArchiveMode.Read);
            var intake = await ZipIntake.OpenAsync(zip, path, cancellation);
            await intake.CheckRestAsync(cancellation);
            var cargo = await new CargoParser(intake).ReadAsync(cancellation);
            return await store.WriteAloneAsync(context => WriteAsync(context, intake, cargo, cancellation), cancellation);
        }
        catch (InvalidDataException fault)
        {
            throw new RecordTroubleException($"{path} is no zip, or was cut short. Nothing was changed; export it again where it came from.", fault);
        }
        catch (Exception fault) when (Trouble.IsAround(fault))
        {
            throw Trouble.Tell(fault, path);
        }
    }

    private static async Task<ImportReport> WriteAsync(RecordsContext context, ZipIntake intake, Cargo cargo, CancellationToken cancellation)
    {
        await using var transaction = await context.Database.BeginTransactionAsync(cancellation);
        await Journal.LockAsync(context, cancellation);
        context.ChangeTracker.AutoDetectChangesEnabled = false;
        var writer = new CargoWriter(context, cargo);
        await writer.WriteAsync(cancellation);
        if (writer.Complaints.Count > 0)
        {
            return Report(intake, writer, 0, cargo);
        }

        await SaveAsync(context, intake);
        var pictures = await PicturesAsync(context, intake, cargo, cancellation);
        await transaction.CommitAsync(CancellationToken.None);
        return Report(intake, writer, pictures, cargo);
    }

    private static ImportReport Report(ZipIntake intake, CargoWriter writer, int pictures, Cargo cargo) => new(
        intake.Manifest,
        new SortedDictionary<string, int>(writer.Added.GroupBy(RecordKinds.NameOf, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal), StringComparer.Ordinal),
        writer.Complaints.Count > 0 ? 0 : cargo.All.Count() - writer.Added.Count,
        writer.Acts,
        pictures,
        writer.Renumbered,
        writer.Complaints);

    private static async Task SaveAsync(RecordsContext context, ZipIntake intake)
    {
        try
        {
            context.ChangeTracker.DetectChanges();
            await context.SaveChangesAsync(CancellationToken.None);
        }
        catch (DbUpdateException fault) when (Trouble.Contradiction(fault) is not null)
        {
            throw intake.Trouble("something in it belongs to a visit, a car or a person that is neither in it nor here", fault);
        }
    }

    // One by one, so that no more than one picture is in memory.
    private static async Task<int> PicturesAsync(RecordsContext context, ZipIntake intake, Cargo cargo, CancellationToken cancellation)
    {
        var photographs = cargo.Of<Photograph>().ToDictionary(p => p.Key);
        var count = 0;
        foreach (var key in intake.Pictures)
        {
            var bytes = await intake.ReadAsync(Form.Picture(key), cancellation);
            var row = PictureBook.Adopt(key, bytes) ?? throw intake.Trouble($"the picture {key:N} is not one that a record keeps");
            if (!photographs.TryGetValue(key, out var photograph) || (photograph.Hash.Length > 0 && !string.Equals(photograph.Hash, row.Hash, StringComparison.Ordinal)))
            {
                throw intake.Trouble($"the picture {key:N} belongs to no photograph in it");
            }

            var here = await context.Pictures.AsNoTracking().Where(p => p.Photograph == key).Select(p => p.Hash).FirstOrDefaultAsync(cancellation);
            if (here is not null && !string.Equals(here, row.Hash, StringComparison.Ordinal))
            {
                throw intake.Trouble($"the picture of \"{photograph.Caption}\" is here already and is another one");
            }

            if (here is null)
            {
                context.Pictures.Add(row);
                await context.SaveChangesAsync(CancellationToken.None);
                context.ChangeTracker.Clear();
                count++;
            }
        }

        return count;
    }
}
