using System.CommandLine;
using Tickover.Records;
using Tickover.Records.Opening;
using Tickover.Workshop.Visits;

namespace Tickover.Cli.Input;

/// <summary>Which workshop record a command works on.</summary>
internal sealed class RecordSource
{
    /// <summary>Variable of the environment that holds a connection string, so that no password stands on a command line.</summary>
    public const string Variable = "TICKOVER_DATABASE";

    private readonly Option<string> _data = new("--data")
    {
        Description = "Folder of the record.",
        HelpName = "FOLDER",
        DefaultValueFactory = _ => "tickover-data",
    };

    private readonly Option<string?> _database = new("--database")
    {
        Description = $"Connection string of a PostgreSQL database that holds the record. Better in the variable {Variable}: others can read a command line.",
        HelpName = "TEXT",
    };

    /// <summary>Adds the options to a command.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command)
    {
        command.Add(_data);
        command.Add(_database);
    }

    /// <summary>Where the record lies.</summary>
    /// <param name="parsed">The command line.</param>
    /// <returns>The place.</returns>
    public RecordPlace Place(ParseResult parsed)
    {
        var variable = Environment.GetEnvironmentVariable(Variable);
        return new RecordPlace(Path.GetFullPath(parsed.GetRequiredValue(_data)), parsed.GetValue(_database) ?? (string.IsNullOrEmpty(variable) ? null : variable));
    }

    /// <summary>Opens the record.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="beginning">Whether a new one may be begun.</param>
    /// <param name="cancellation">Stops the opening.</param>
    /// <returns>The open record.</returns>
    /// <exception cref="RecordTroubleException">There is none, or it cannot be opened.</exception>
    public Task<RecordStore> OpenAsync(ParseResult parsed, Beginning beginning, CancellationToken cancellation) =>
        RecordOpening.OpenAsync(Place(parsed), beginning, TimeProvider.System, cancellation);
}
