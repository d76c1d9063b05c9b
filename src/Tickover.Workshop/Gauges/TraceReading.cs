using Tickover.Physics.Sending;

namespace Tickover.Workshop.Gauges;

/// <summary>The outcome of reading a recorded drive.</summary>
/// <param name="Road">The drive; null where it cannot be taken.</param>
/// <param name="Complaint">What is wrong or asked; empty where there is a drive.</param>
public sealed record TraceReading(RoadTrace? Road, string Complaint);
