using System.Text.Json;

namespace Tickover.Workshop.Balance.Documents;

/// <summary>A rounds document as it is written.</summary>
internal sealed record WrittenRounds
{
    public string? Format { get; init; }

    /// <summary>Name of a car document or plan beside this file, or the plan itself.</summary>
    public JsonElement? Engine { get; init; }

    /// <summary>What is read here besides air: "vacuum", "lambda", "header".</summary>
    public IReadOnlyList<string>? Gauges { get; init; }

    public WrittenMeter? Meter { get; init; }

    public IReadOnlyList<WrittenStep>? Steps { get; init; }
}
