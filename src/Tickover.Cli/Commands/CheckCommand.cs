using System.CommandLine;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Tickover.Cli.Input;
using Tickover.Cli.Json;
using Tickover.Cli.Output;
using Tickover.Workshop.Cars;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover check</c>: whether a car document can be used, everything that is wrong at once, and what it describes.</summary>
internal sealed class CheckCommand : ExampledCommand
{
    private readonly Terminal _terminal;
    private readonly Delivery _delivery;

    private readonly Argument<string[]> _files = new("CAR")
    {
        Description = "Car documents, or - for the standard input.",
        Arity = ArgumentArity.OneOrMore,
    };

    private readonly Option<bool> _defaults = new("--defaults") { Description = "Show every figure that stands in by default, with where it comes from." };
    private readonly Option<bool> _brief = new("--brief") { Description = "Two lines for each document that is good." };
    private readonly Option<bool> _json = new("--json") { Description = "Print JSON (docs/schemas/check.schema.json)." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    public CheckCommand(Terminal terminal)
        : base(
            "check",
            "Reads car documents, lists everything that is wrong with them and says what they describe.",
            "tickover check samples/tern-2800.car.json",
            "tickover check --defaults samples/tern-2800.car.json")
    {
        _terminal = terminal;
        _delivery = new Delivery(terminal);
        Add(_files);
        Add(_defaults);
        Add(_brief);
        Add(_json);
        _delivery.AddTo(this);
        SetAction(Run);
    }

    private Task<int> Run(ParseResult parsed, CancellationToken cancellation)
    {
        var documents = parsed.GetRequiredValue(_files).Select(Read).ToArray();
        foreach (var document in documents.Where(d => d.Complaint is not null))
        {
            _terminal.Error.WriteLine(document.Complaint);
        }

        var code = documents.Any(d => d.Complaint is not null) ? ExitCode.UnusableInput
            : documents.Any(d => d.Reading?.Car is null) ? ExitCode.AnswerIsNo
            : ExitCode.Done;
        var given = _delivery.Give(parsed, parsed.GetValue(_json) ? Json(documents) : Text(parsed, documents), cancellation);
        return Task.FromResult(Math.Max(code, given));
    }

    private Judged Read(string file)
    {
        var text = CarFile.Read(file, _terminal);
        return text.Good ? new Judged(file, null, CarDocument.Read(text.Value)) : new Judged(file, text.Complaint, null);
    }

    private string Text(ParseResult parsed, IEnumerable<Judged> documents)
    {
        var text = new StringBuilder();
        foreach (var document in documents)
        {
            if (document.Reading is { } reading)
            {
                Append(text, parsed, document.File, reading);
            }
        }

        return text.ToString();
    }

    private void Append(StringBuilder text, ParseResult parsed, string file, CarReading reading)
    {
        if (reading.Car is not { } car)
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"{file}: {(reading.Faults.Count == 1 ? "1 fault" : $"{reading.Faults.Count} faults")}, cannot be used.");
            text.Append(FaultTable.Text(reading.Faults, _terminal.Width));
            return;
        }

        var summary = new CarSummary(car, _terminal.Width);
        text.AppendLine(summary.Headline).AppendLine(CultureInfo.InvariantCulture, $"  {file}: {summary.Census}");
        if (parsed.GetValue(_brief))
        {
            return;
        }

        if (reading.Warnings.Count > 0)
        {
            text.AppendLine().AppendLine("Accepted, but unusual").Append(FaultTable.Text(reading.Warnings, _terminal.Width));
        }

        text.Append(summary.Given());
        text.Append(parsed.GetValue(_defaults) ? summary.Defaults() : $"{Environment.NewLine}--defaults shows the rest with where it comes from.{Environment.NewLine}");
    }

    private static string Json(IEnumerable<Judged> documents) =>
        JsonSerializer.Serialize(
            new CheckDocument([.. documents.Select(d => new CheckedDocument(
                d.File,
                d.Reading?.Car is not null,
                d.Complaint,
                d.Reading?.Faults ?? [],
                d.Reading?.Warnings ?? [],
                d.Reading?.Car is { } car ? CheckedCar.Of(car) : null))]),
            CommandJson.Readable.CheckDocument) + Environment.NewLine;

    /// <summary>A document and what became of it.</summary>
    private sealed record Judged(string File, string? Complaint, CarReading? Reading);
}
