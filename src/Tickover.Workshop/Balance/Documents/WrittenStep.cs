using System.Text.Json;

namespace Tickover.Workshop.Balance.Documents;

/// <summary>One step as it is written: a round, a turn, rods off or on, something looked at, offered or checked.</summary>
internal sealed record WrittenStep
{
    /// <summary>"idle", or the speed held, rpm.</summary>
    public JsonElement? Round { get; init; }

    /// <summary>"as found", "working" or "as left".</summary>
    public string? Moment { get; init; }

    public double? Oil { get; init; }

    public IReadOnlyList<WrittenReading>? Readings { get; init; }

    public WrittenReading? Again { get; init; }

    /// <summary>Key of what was turned.</summary>
    public string? Turn { get; init; }

    public double? Turns { get; init; }

    /// <summary>Number of the bank whose gas was read.</summary>
    public int? Gas { get; init; }

    public double? Lambda { get; init; }

    /// <summary>CO, per cent.</summary>
    public double? Co { get; init; }

    /// <summary>"off" or "on".</summary>
    public string? Rods { get; init; }

    /// <summary>Key of the stop looked at.</summary>
    public string? Look { get; init; }

    /// <summary>Key of the rod offered.</summary>
    public string? Offer { get; init; }

    /// <summary>Gap of the stop, or how much the rod is too long, mm.</summary>
    public double? Gap { get; init; }

    /// <summary>A fault looked for, such as "leakBelowPlate barrel 3".</summary>
    public string? Checked { get; init; }

    public bool? Found { get; init; }
}
