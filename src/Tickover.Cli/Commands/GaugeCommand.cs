using System.CommandLine;
using Tickover.Cli.Input;
using Tickover.Cli.Output;
using Tickover.Workshop.Gauges;
using Tickover.Workshop.Gauges.Traces;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover gauge</c>: why the gauge of two linked tanks lies, and what helps.</summary>
internal sealed class GaugeCommand : ExampledCommand
{
    private readonly Terminal _terminal;
    private readonly Delivery _delivery;
    private readonly Argument<string> _file = new("FILE") { Description = "The gauge document (docs/gauge-document.md), or - for the standard input." };
    private readonly Option<string?> _trace = new("--trace") { Description = "Drive this recorded road instead: CSV of accelerations (time, ahead, left), or a GPX track.", HelpName = "FILE" };
    private readonly Option<string?> _units = new("--units") { Description = "Unit of the accelerations where the CSV does not say: m/s2 or g.", HelpName = "UNIT" };
    private readonly Option<string?> _ahead = new("--ahead") { Description = "Column of the CSV that points ahead.", HelpName = "COLUMN" };
    private readonly Option<string?> _left = new("--left") { Description = "Column of the CSV that points to the left.", HelpName = "COLUMN" };
    private readonly Option<bool> _bridge = new("--bridge-gaps") { Description = "Draw straight lines over gaps in the recording." };
    private readonly Option<bool> _json = new("--json") { Description = "Print JSON (docs/schemas/gauge.schema.json)." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    public GaugeCommand(Terminal terminal)
        : base(
            "gauge",
            "Follows the fuel of two linked tanks along a road: what the needle says, what is really there, why they differ, and what helps.",
            "tickover gauge samples/tern.gauge.json",
            "tickover gauge samples/tern.gauge.json --trace samples/tern-trace.csv --json")
    {
        _terminal = terminal;
        _delivery = new Delivery(terminal);
        foreach (var option in new Option[] { _trace, _units, _ahead, _left, _bridge, _json })
        {
            Add(option);
        }

        Add(_file);
        _delivery.AddTo(this);
        SetAction(RunAsync);
    }

    private async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        var file = parsed.GetRequiredValue(_file);
        var text = CarFile.Read(file, _terminal);
        if (!text.Good)
        {
            return await RefuseAsync(text.Complaint);
        }

        var reading = GaugeDocument.Read(text.Value);
        if (reading.Setup is not { } setup)
        {
            return await RefuseAsync($"{file} cannot be used:{Environment.NewLine}{FaultTable.Text(reading.Faults, _terminal.Width)}");
        }

        if (parsed.GetValue(_trace) is { } trace)
        {
            var (road, question) = Recorded(parsed, trace);
            if (road is null)
            {
                return await RefuseAsync(question!);
            }

            setup = setup with { Road = road };
        }

        var analysis = await Progress.ShowAsync(_terminal, "Driving the road with every remedy", token => GaugeAnalyst.Of(setup, token), TimeProvider.System, cancellation);
        return _delivery.Give(parsed, parsed.GetValue(_json) ? GaugeJson.Text(analysis) : new GaugeText(_terminal.Width).Text(analysis), cancellation);
    }

    private (GaugeRoad? Road, string? Question) Recorded(ParseResult parsed, string file)
    {
        TraceUnit? unit = parsed.GetValue(_units) switch { "g" => TraceUnit.Gravities, "m/s2" => TraceUnit.MetresPerSecondSquared, _ => null };
        if (unit is null && parsed.GetValue(_units) is { } word)
        {
            return (null, $"--units is m/s2 or g, not {word}.");
        }

        var text = CarFile.Read(file, _terminal);
        if (!text.Good)
        {
            return (null, text.Complaint);
        }

        var choices = new TraceChoices { Unit = unit, BridgeGaps = parsed.GetValue(_bridge), Ahead = parsed.GetValue(_ahead), Left = parsed.GetValue(_left) };
        var reading = RecordedTrace.Read(Path.GetFileName(file), text.Value, choices);
        foreach (var note in reading.Notes)
        {
            _terminal.Error.WriteLine(note);
        }

        return (reading.Road, reading.Question);
    }

    private async Task<int> RefuseAsync(string complaint)
    {
        await _terminal.Error.WriteLineAsync(complaint);
        return ExitCode.UnusableInput;
    }
}
