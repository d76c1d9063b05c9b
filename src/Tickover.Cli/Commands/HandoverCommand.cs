using System.CommandLine;
using System.Globalization;
using Tickover.Records;
using Tickover.Records.Opening;
using Tickover.Reports.HandOver;
using Tickover.Reports.Paper;
using Tickover.Workshop.Visits;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover handover</c>: the owner's account or the set-up card of a visit, from the record alone.</summary>
internal sealed class HandoverCommand : RecordedCommand
{
    private readonly Argument<string> _visit = new("VISIT") { Description = "Number of the visit, as tickover record lists it." };

    private readonly Option<string> _file = new("--output", "-o")
    {
        Description = "File to write: .pdf, or .html for one file that carries everything with it.",
        HelpName = "FILE",
        Required = true,
    };

    private readonly Option<bool> _card = new("--card") { Description = "The set-up card that stays with the car, instead of the account." };

    private readonly Option<string?> _paper = new("--paper") { Description = "a4 or letter; the workshop's own where it is left out.", HelpName = "SIZE" };

    private readonly Option<string?> _address = new("--address")
    {
        Description = "Address of the pages, such as http://bench.local:5480, for the code on the paper that leads back to the record.",
        HelpName = "ADDRESS",
    };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it talks.</param>
    public HandoverCommand(Terminal terminal)
        : base(terminal, "handover", "Writes the owner's account of a visit, or its set-up card, from the record alone.", "tickover handover 1 -o account.pdf --data tickover-data")
    {
        _paper.AcceptOnlyFromAmong("a4", "letter");
        Add(_visit);
        Add(_file);
        Add(_card);
        Add(_paper);
        Add(_address);
    }

    /// <inheritdoc/>
    protected override async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        var file = parsed.GetRequiredValue(_file);
        var isPdf = file.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase);
        if (!isPdf && !file.EndsWith(".html", StringComparison.OrdinalIgnoreCase))
        {
            return await RefuseAsync($"{file}: the name has to end in .pdf or .html, which says what is written.");
        }

        using var store = await Source.OpenAsync(parsed, Beginning.Expected, cancellation);
        if (await FindAsync(store, parsed.GetRequiredValue(_visit), cancellation) is not { } record)
        {
            return await RefuseAsync($"There is no visit \"{parsed.GetRequiredValue(_visit)}\". The open ones are listed by: tickover record");
        }

        var settings = await SettingsAsync(store, record, parsed.GetValue(_address), cancellation);
        var document = parsed.GetValue(_card) ? SetUpCardDocument.Of(record, settings) : HandOverDocument.Of(record, settings);
        var size = parsed.GetValue(_paper) is { } paper ? Enum.Parse<PaperSize>(paper, ignoreCase: true) : record.Workshop.House.Paper;
        await WriteAsync(file, isPdf, document, size, cancellation);
        await SayAsync($"{file}: {document.Title}.");
        return ExitCode.Done;
    }

    private static async Task<VisitRecord?> FindAsync(RecordStore store, string wanted, CancellationToken cancellation)
    {
        if (Id.Read<Visit>(wanted) is { } id)
        {
            return await store.VisitAsync(id, cancellation);
        }

        var visits = await store.AllAsync<Visit>(cancellation);
        return int.TryParse(wanted, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && visits.FirstOrDefault(v => v.Number == number && !v.Removed) is { } visit
            ? await store.VisitAsync(visit.Id, cancellation)
            : null;
    }

    private static async Task<HandOverSettings> SettingsAsync(RecordStore store, VisitRecord record, string? address, CancellationToken cancellation)
    {
        var book = new PictureBook(store);
        var pictures = new Dictionary<Id<Photograph>, byte[]>();
        foreach (var photograph in record.Photographs.Where(p => p.InHandOver))
        {
            if (await book.ReadAsync(photograph.Id, PictureScale.Whole, cancellation) is { } picture)
            {
                pictures[photograph.Id] = picture;
            }
        }

        return new HandOverSettings
        {
            On = record.Visit.LeftOn ?? DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime),
            Address = address is null ? "" : $"{address.TrimEnd('/')}/visits/{record.Visit.Id}",
            Picture = pictures.GetValueOrDefault,
        };
    }

    // Beside its name first, so that an interrupted writing leaves no half a paper.
    private static async Task WriteAsync(string file, bool isPdf, PaperDocument document, PaperSize size, CancellationToken cancellation)
    {
        var beside = file + ".part";
        try
        {
            await using (var stream = new FileStream(beside, FileMode.Create, FileAccess.ReadWrite))
            {
                if (isPdf)
                {
                    PaperPdf.Write(document, size, stream);
                }
                else
                {
                    await using var writer = new StreamWriter(stream, leaveOpen: true);
                    await writer.WriteAsync(PaperHtml.Write(document).AsMemory(), cancellation);
                }
            }

            File.Move(beside, file, overwrite: true);
        }
        finally
        {
            File.Delete(beside);
        }
    }

    private async Task<int> RefuseAsync(string complaint)
    {
        await Terminal.Error.WriteLineAsync(complaint);
        return ExitCode.UnusableInput;
    }
}
