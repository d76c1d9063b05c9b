using System.CommandLine;
using Tickover.Cli.Input;
using Tickover.Records;
using Tickover.Records.Opening;
using Tickover.Web.Papers;
using Tickover.Workshop.Visits;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover demo</c>: the invented workshop in a record of its own.</summary>
internal sealed class DemoCommand : ExampledCommand
{
    private readonly Terminal _terminal;

    private readonly Option<string> _data = new("--data")
    {
        Description = "Folder of the record; made if it is not there.",
        HelpName = "FOLDER",
        DefaultValueFactory = _ => "tickover-data",
    };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it talks.</param>
    public DemoCommand(Terminal terminal)
        : base("demo", "Begins an empty record with the invented workshop of the demonstration.", "tickover demo --data tickover-data")
    {
        _terminal = terminal;
        Add(_data);
        SetAction(RunAsync);
    }

    private async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        var data = parsed.GetRequiredValue(_data);
        if (DataFolder.Make(data) is { } complaint)
        {
            return await RefuseAsync(complaint);
        }

        if (DemonstrationLoader.Documents(Path.Combine(AppContext.BaseDirectory, "samples")) is not { } documents)
        {
            return await RefuseAsync("The sample documents of the demonstration's cars are missing beside the program. Install it again.");
        }

        try
        {
            using var store = await RecordOpening.OpenAsync(new RecordPlace(Path.GetFullPath(data), null), Beginning.Allowed, TimeProvider.System, cancellation);
            if ((await store.SizeAsync(cancellation)).LastAct is not null)
            {
                return await RefuseAsync($"--data {data}: this record is begun already. Choose an empty folder; the demonstration is never mixed with other cars.");
            }

            if (await DemonstrationLoader.LoadAsync(store, documents, DateOnly.FromDateTime(DateTime.Now), cancellation) is { } refusal)
            {
                return await RefuseAsync(refusal);
            }

            var size = await store.SizeAsync(cancellation);
            await _terminal.Output.WriteLineAsync($"The invented workshop is in {size.Where}: {size.Cars} cars, {size.Visits} visits, {size.Readings} readings. Its PINs are not set; set them on the page of the people.");
            return ExitCode.Done;
        }
        catch (RecordTroubleException e)
        {
            return await RefuseAsync(e.Message);
        }
    }

    private async Task<int> RefuseAsync(string complaint)
    {
        await _terminal.Error.WriteLineAsync(complaint);
        return ExitCode.UnusableInput;
    }
}
