using System.CommandLine;
using System.Globalization;
using Tickover.Records.Carrying;
using Tickover.Records.Opening;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover import</c>: takes an export into a record, all of it or nothing.</summary>
internal sealed class ImportCommand : RecordedCommand
{
    private readonly Argument<string> _file = new("FILE.zip") { Description = "What tickover export wrote." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it talks.</param>
    public ImportCommand(Terminal terminal)
        : base(
            terminal,
            "import",
            "Takes an export into the record, all of it or nothing; a folder without a record gets a new one.",
            "tickover import everything.zip --data tickover-new")
    {
        Add(_file);
    }

    /// <inheritdoc/>
    protected override async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        var file = parsed.GetRequiredValue(_file);
        if (!File.Exists(file))
        {
            // Said before a new record is begun for nothing.
            await Terminal.Error.WriteLineAsync($"There is no file {file}. Name the export.");
            return ExitCode.UnusableInput;
        }

        using var store = await Source.OpenAsync(parsed, Beginning.Allowed, cancellation);
        var report = await RecordImport.ReadAsync(store, file, cancellation);
        if (!report.IsIn)
        {
            await Terminal.Error.WriteLineAsync($"Nothing was taken in, since what is here reads otherwise:{Environment.NewLine}  {string.Join(Environment.NewLine + "  ", report.Complaints)}");
            return ExitCode.AnswerIsNo;
        }

        await SayAsync(string.Create(
            CultureInfo.InvariantCulture,
            $"Taken into {store.Place.Words}: {report.Added.Values.Sum()} items, {report.Acts} acts, {report.Pictures} pictures. {report.Left} items were here already."));
        foreach (var (there, here) in report.Renumbered)
        {
            await SayAsync(string.Create(CultureInfo.InvariantCulture, $"Visit {there} is visit {here} here: its number was taken."));
        }

        return ExitCode.Done;
    }
}
