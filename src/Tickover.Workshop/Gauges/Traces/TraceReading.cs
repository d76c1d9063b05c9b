namespace Tickover.Workshop.Gauges.Traces;

/// <summary>A recorded trace, or the question that has to be answered first.</summary>
/// <param name="Road">The road; null where there is a question.</param>
/// <param name="Question">What is doubtful and how to answer; null where there is a road.</param>
/// <param name="Notes">What was done with the file.</param>
public sealed record TraceReading(GaugeRoad? Road, string? Question, IReadOnlyList<string> Notes)
{
    internal static TraceReading Ask(string question) => new(null, question, []);
}
