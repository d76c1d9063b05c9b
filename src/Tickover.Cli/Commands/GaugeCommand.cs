using System.CommandLine;
using Tickover.Cli.Input;
using Tickover.Cli.Output;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Gauges;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover gauge</c>: two tanks, a pipe and a needle on the road, and why the gauge lies.</summary>
internal sealed class GaugeCommand : DocumentCommand<GaugeStory>
{
    private readonly Option<string?> _trace = new("--trace") { Description = "Drive this recorded trace instead of the document's road: a CSV of accelerations or a GPX track.", HelpName = "FILE" };
    private readonly Option<string?> _units = new("--units") { Description = "What the trace's accelerations are in: m/s2 or g.", HelpName = "UNITS" };
    private readonly Option<string?> _axes = new("--axes") { Description = "Columns that point ahead, left and up, such as ax,ay,az or -y,x,z.", HelpName = "COLUMNS" };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    public GaugeCommand(Terminal terminal)
        : base(
            terminal,
            "gauge",
            "Drives two linked tanks and their fuel gauge over a road: needle beside truth, why it lies, and what each remedy does.",
            "tickover gauge samples/tern.gauge.json",
            "tickover gauge samples/tern.gauge.json --trace samples/tern-trace.csv")
    {
        Add(_trace);
        Add(_units);
        Add(_axes);
    }

    /// <inheritdoc/>
    protected override string Doing => "Driving";

    /// <inheritdoc/>
    protected override (GaugeStory? Subject, IReadOnlyList<Fault> Faults) Read(string text)
    {
        var reading = GaugeDocument.Read(text);
        return (reading.Story, reading.Faults);
    }

    /// <inheritdoc/>
    protected override Answer<GaugeStory> Asked(GaugeStory subject, ParseResult parsed)
    {
        if (parsed.GetValue(_trace) is not { } trace)
        {
            return subject;
        }

        var recorded = CarFile.Read(trace, Terminal);
        if (!recorded.Good)
        {
            return Answer<GaugeStory>.No(recorded.Complaint);
        }

        var drive = TraceReader.Read(recorded.Value, parsed.GetValue(_units), parsed.GetValue(_axes));
        return drive.Road is null ? Answer<GaugeStory>.No($"{trace}: {drive.Complaint}") : GaugeRoads.On(subject, drive.Road);
    }

    /// <inheritdoc/>
    protected override (string Text, bool IsNo) Answer(GaugeStory subject, bool json, int width)
    {
        var analysis = GaugeAnalyst.Of(subject);
        return (json ? GaugeJson.Text(analysis) : new GaugeText(width).Text(analysis), false);
    }
}
