using System.CommandLine;
using System.Globalization;
using Tickover.Records.Carrying;
using Tickover.Records.Opening;
using Tickover.Workshop.Visits;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover export</c>: the record, or one car of it, as a zip of JSON, tables and pictures.</summary>
internal sealed class ExportCommand : RecordedCommand
{
    private readonly Argument<string> _file = new("FILE.zip") { Description = "The zip; it must not be there yet." };

    private readonly Option<string?> _car = new("--car") { Description = "Only this car with its visits: its short name, its name or its registration.", HelpName = "NAME" };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it talks.</param>
    public ExportCommand(Terminal terminal)
        : base(
            terminal,
            "export",
            "Writes the record, or one car of it, into a zip of JSON, tables and pictures. PINs are never in it.",
            "tickover export everything.zip --data tickover-data",
            "tickover export tern.zip --car larkfield-tern-2800 --data tickover-data")
    {
        Add(_file);
        Add(_car);
    }

    /// <inheritdoc/>
    protected override async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        using var store = await Source.OpenAsync(parsed, Beginning.Expected, cancellation);
        Id<CustomerCar>? one = null;
        if (parsed.GetValue(_car) is { } name)
        {
            var cars = await store.AllAsync<CustomerCar>(cancellation);
            var found = Find(cars, name);
            if (found.Count != 1)
            {
                await Terminal.Error.WriteLineAsync(
                    $"--car {name}: {(found.Count == 0 ? "there is no such car." : "several cars go by it.")} The cars here are: {string.Join(", ", cars.Select(c => c.Slug))}.");
                return ExitCode.UnusableInput;
            }

            one = found[0].Id;
        }

        var file = parsed.GetRequiredValue(_file);
        var manifest = await RecordExport.WriteAsync(store, file, one, cancellation);
        var items = manifest.Counts.Where(c => RecordKinds.Find(c.Key) is not null).Sum(c => c.Value);
        await SayAsync(string.Create(CultureInfo.InvariantCulture, $"{file}: {items} items, {manifest.Counts["acts"]} acts, {manifest.Counts["pictures"]} pictures. README.txt in it says what is where."));
        return ExitCode.Done;
    }

    private static List<CustomerCar> Find(IReadOnlyList<CustomerCar> cars, string name)
    {
        var bySlug = cars.Where(c => string.Equals(c.Slug, name, StringComparison.Ordinal)).ToList();
        return bySlug.Count > 0
            ? bySlug
            : [.. cars.Where(c => string.Equals(c.Name, name, StringComparison.OrdinalIgnoreCase) || string.Equals(c.Registration, name, StringComparison.OrdinalIgnoreCase))];
    }
}
