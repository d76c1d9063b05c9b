namespace Tickover.Workshop.Gauges;

/// <summary>A paragraph of the gauge's account.</summary>
/// <param name="Heading">What it is about.</param>
/// <param name="Words">The words.</param>
public sealed record GaugeAdvice(string Heading, string Words);
