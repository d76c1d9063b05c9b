using Tickover.Workshop.Visits.Authorities;

namespace Tickover.Workshop.Visits.Cautions;

/// <summary>What is shown before a hazardous step. It never says that anything may be done without danger.</summary>
public sealed record Caution
{
    /// <summary>The last sentence under every caution.</summary>
    public const string Closing = "This page does not say that anything is safe; local law, your site's own rules and licensed trades come first.";

    /// <summary>Key it is confirmed under.</summary>
    public required string Key { get; init; }

    /// <summary>Stage in which the step is usually met.</summary>
    public required Stage Stage { get; init; }

    /// <summary>The step, such as "Draining petrol".</summary>
    public required string Step { get; init; }

    /// <summary>The one act that comes first.</summary>
    public required string First { get; init; }

    /// <summary>Why, in one sentence.</summary>
    public required string Why { get; init; }

    /// <summary>Three to six conditions, in order.</summary>
    public required IReadOnlyList<string> Conditions { get; init; }

    /// <summary>Topics on which to defer to authorities, the chief one first.</summary>
    public required IReadOnlyList<HazardTopic> Topics { get; init; }

    /// <summary>Whether tablets and telephones stay outside the zone, which the drawing of the bay shows.</summary>
    public required TabletPlace Tablet { get; init; }

    /// <summary>What to enter when back.</summary>
    public required string EnterAfterwards { get; init; }

    /// <summary>Whether the step is never done in this workshop.</summary>
    public bool NeverHere { get; init; }
}
