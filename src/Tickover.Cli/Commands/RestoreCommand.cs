using System.CommandLine;
using System.Globalization;
using Tickover.Records.Safekeeping;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover restore</c>: puts a backup in the record's place and keeps what stood there.</summary>
internal sealed class RestoreCommand : RecordedCommand
{
    private readonly Argument<string> _file = new("FILE") { Description = "The backup; it is left as it is." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it talks.</param>
    public RestoreCommand(Terminal terminal)
        : base(terminal, "restore", "Puts a backup in the place of the record and keeps the replaced one aside. The server must be stopped.", "tickover restore monday.db --data tickover-data")
    {
        Add(_file);
    }

    /// <inheritdoc/>
    protected override async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        var report = await RecordRestore.PutBackAsync(Source.Place(parsed), parsed.GetRequiredValue(_file), TimeProvider.System, cancellation);
        await SayAsync(string.Create(
            CultureInfo.InvariantCulture,
            $"Put back {report.Backup.File}: {report.Backup.Print.Acts} acts, {report.Backup.Print.AllItems} items, {report.Backup.Pictures} pictures."));
        if (report.WasAnother)
        {
            await SayAsync("The folder belonged to another record before.");
        }

        if (report.Aside is { } aside)
        {
            await SayAsync($"The record that stood there is kept as {aside}.");
        }

        return ExitCode.Done;
    }
}
