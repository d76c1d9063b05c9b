using Tickover.Workshop.Gauges;

namespace Tickover.Web.Gauges;

/// <summary>A gauge's story that is being looked at.</summary>
/// <param name="Id">Its name in the address: a sample's name, or the beginning of the hash of the document.</param>
/// <param name="Story">The story.</param>
public sealed record GaugeInHand(string Id, GaugeStory Story);
