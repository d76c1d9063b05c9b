using System.Globalization;
using Tickover.Web.Worksheets;
using Tickover.Workshop.Gauges;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Gauges;

/// <summary>Gauges' stories in hand.</summary>
public sealed class GaugesInHand
{
    /// <summary>Makes the shelf.</summary>
    /// <param name="options">Names the folder of the samples.</param>
    public GaugesInHand(WebAppOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        Stories = new(options.SamplesFolder, ".gauge.json", text => GaugeDocument.Read(text) is var reading ? (reading.Story, reading.Faults) : default);
        Intake = new()
        {
            Address = "/gauges",
            Title = "Gauges",
            Where = "Two tanks, a pipe and a needle on the road",
            Ask = "Tanks and gauge as measured",
            Lead = "Both tanks, the pipe between them, the float and the gauge.",
            Guides = [("/gauge-document", "How it is written down")],
            Example = "tern.gauge.json",
            Act = "Drive it",
            Stage = Stage.Gauge,
            Kinds = [IntakeKind.Of(GaugeDocument.Format, Stories, "/gauges", story => (story.Name, string.Create(CultureInfo.InvariantCulture, $"Two tanks, a pipe of {1000 * story.Tanks.Pipe.BoreMetres:0.#} mm"), ""))],
        };
    }

    /// <summary>The stories.</summary>
    public DocumentShelf<GaugeStory> Stories { get; }

    /// <summary>Where they are taken in.</summary>
    public Intake Intake { get; }
}
