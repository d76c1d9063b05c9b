using Tickover.Web.Worksheets;
using Tickover.Workshop.Gauges;

namespace Tickover.Web.Gauges;

/// <summary>Gauges' stories in hand.</summary>
/// <param name="options">Names the folder of the samples.</param>
public sealed class GaugesInHand(WebAppOptions options)
{
    /// <summary>The stories.</summary>
    public DocumentShelf<GaugeStory> Stories { get; } = new(options.SamplesFolder, ".gauge.json", text => GaugeDocument.Read(text).Story);
}
