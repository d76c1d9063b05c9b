using System.CommandLine;
using System.Globalization;
using Tickover.Records.Opening;
using Tickover.Records.Safekeeping;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover backup</c>: one file that holds the whole record, looked through before it counts.</summary>
internal sealed class BackupCommand : RecordedCommand
{
    private readonly Argument<string> _file = new("FILE") { Description = "The backup; it must not be there yet. Best on another disk." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it talks.</param>
    public BackupCommand(Terminal terminal)
        : base(terminal, "backup", "Backs the record up into one file, also while the server runs, and checks the backup whole.", "tickover backup monday.db --data tickover-data")
    {
        Add(_file);
    }

    /// <inheritdoc/>
    protected override async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        using var store = await Source.OpenAsync(parsed, Beginning.Expected, cancellation);
        var report = await RecordBackup.MakeAsync(store, parsed.GetRequiredValue(_file), cancellation);
        await SayAsync(string.Create(
            CultureInfo.InvariantCulture,
            $"{report.File}: {report.Print.Acts} acts, {report.Print.AllItems} items, {report.Pictures} pictures, {report.Bytes / 1024.0:F0} KiB. Opened, checked and compared with the record."));
        return ExitCode.Done;
    }
}
