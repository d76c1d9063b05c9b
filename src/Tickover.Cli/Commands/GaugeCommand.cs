using System.CommandLine;
using Tickover.Cli.Input;
using Tickover.Cli.Output;
using Tickover.Workshop.Gauges;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover gauge</c>: two tanks, a pipe and a needle on the road, and why the gauge lies.</summary>
internal sealed class GaugeCommand : ExampledCommand
{
    private readonly Terminal _terminal;
    private readonly Delivery _delivery;
    private readonly Argument<string> _file = new("FILE") { Description = "The gauge document (docs/gauge-document.md), or - for the standard input." };
    private readonly Option<string?> _trace = new("--trace") { Description = "Drive this recorded trace instead of the document's road: a CSV of accelerations or a GPX track.", HelpName = "FILE" };
    private readonly Option<string?> _units = new("--units") { Description = "What the trace's accelerations are in: m/s2 or g.", HelpName = "UNITS" };
    private readonly Option<string?> _axes = new("--axes") { Description = "Columns that point ahead, left and up, such as ax,ay,az or -y,x,z.", HelpName = "COLUMNS" };
    private readonly Option<bool> _json = new("--json") { Description = "Print JSON (docs/schemas/gauge.schema.json)." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    public GaugeCommand(Terminal terminal)
        : base(
            "gauge",
            "Drives two linked tanks and their fuel gauge over a road: needle beside truth, why it lies, and what each remedy does.",
            "tickover gauge samples/tern.gauge.json",
            "tickover gauge samples/tern.gauge.json --trace samples/tern-trace.csv")
    {
        _terminal = terminal;
        _delivery = new Delivery(terminal);
        Add(_file);
        Add(_trace);
        Add(_units);
        Add(_axes);
        Add(_json);
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
        if (reading.Story is not { } story)
        {
            return await RefuseAsync($"{file} cannot be used:{Environment.NewLine}{FaultTable.Text(reading.Faults, _terminal.Width)}");
        }

        if (parsed.GetValue(_trace) is { } trace)
        {
            var recorded = CarFile.Read(trace, _terminal);
            if (!recorded.Good)
            {
                return await RefuseAsync(recorded.Complaint);
            }

            var drive = TraceReader.Read(recorded.Value, parsed.GetValue(_units), parsed.GetValue(_axes));
            if (drive.Road is null)
            {
                return await RefuseAsync($"{trace}: {drive.Complaint}");
            }

            story = GaugeRoads.On(story, drive.Road);
        }

        var analysis = await Progress.ShowAsync(_terminal, "Driving", _ => GaugeAnalyst.Of(story), TimeProvider.System, cancellation);
        return _delivery.Give(parsed, parsed.GetValue(_json) ? GaugeJson.Text(analysis) : new GaugeText(_terminal.Width).Text(analysis), cancellation);
    }

    private async Task<int> RefuseAsync(string complaint)
    {
        await _terminal.Error.WriteLineAsync(complaint);
        return ExitCode.UnusableInput;
    }
}
