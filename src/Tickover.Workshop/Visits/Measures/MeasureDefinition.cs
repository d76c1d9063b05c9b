namespace Tickover.Workshop.Visits.Measures;

/// <summary>One thing that is measured on a visit: what, where, in which units, how finely, and what is accepted.</summary>
public sealed record MeasureDefinition
{
    /// <summary>The key by which readings name it, in camelCase, such as "idleAirflow".</summary>
    public required string Key { get; init; }

    /// <summary>What it is, in few words, British.</summary>
    public required string Label { get; init; }

    /// <summary>The parts of the stages in which it is taken, at least one.</summary>
    public required IReadOnlyList<SubStep> Steps { get; init; }

    /// <summary>What it is taken of.</summary>
    public required PlaceKind Per { get; init; }

    /// <summary>The kind of quantity.</summary>
    public required Quantity Quantity { get; init; }

    /// <summary>Unit of <see cref="Reading.Si"/>; "1" for a plain number, empty for words.</summary>
    public required string SiUnit { get; init; }

    /// <summary>Unit shown, and taken where none is typed, with metric units; empty for plain numbers and words.</summary>
    public required string MetricUnit { get; init; }

    /// <summary>Unit shown, and taken where none is typed, with imperial units.</summary>
    public required string ImperialUnit { get; init; }

    /// <summary>Decimals the instrument gives in the metric unit; −1 stands for tens.</summary>
    public required int Decimals { get; init; }

    /// <summary>Decimals the instrument gives in the imperial unit.</summary>
    public required int ImperialDecimals { get; init; }

    /// <summary>What it usually lies between; null where nothing can be said.</summary>
    public PlausibleRange? Usual { get; init; }

    /// <summary>The words to choose from; empty for anything else.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>Whether it is a setting or state that is shown as found beside as left.</summary>
    public bool IsSetting { get; init; }

    /// <summary>Whether complete sets over all places are read one after another, as rounds.</summary>
    public bool IsRound { get; init; }

    /// <summary>What is accepted; null where nothing is.</summary>
    public MeasureLimit? Limit { get; init; }

    /// <summary>Whether the engine runs for it, so that the engine's gate stands before it.</summary>
    public bool EngineRuns { get; init; }

    /// <summary>What to measure with, and how; empty where that needs no saying.</summary>
    public string Hint { get; init; } = "";

    /// <summary>Whether it has a value rather than words.</summary>
    public bool IsNumber => Quantity is not (Quantity.Words or Quantity.Choice);

    /// <summary>The stages in which it is taken.</summary>
    public IEnumerable<Stage> Stages => Steps.Select(s => s.StageOf()).Distinct();

    /// <summary>The unit shown.</summary>
    /// <param name="units">Metric or imperial.</param>
    /// <returns>The unit; empty for plain numbers and words.</returns>
    public string Unit(UnitChoice units) => units == UnitChoice.Imperial ? ImperialUnit : MetricUnit;
}
