using System.Globalization;

namespace Tickover.Web.Mixture;

/// <summary>The state of the mixture and jets pages, all of it in the address, so that every state can be linked.</summary>
public sealed record BenchQuery
{
    /// <summary>Barrel looked at, from 1.</summary>
    public int Barrel { get; init; } = 1;

    /// <summary>Engine speed looked at, rpm; null for where the map opens.</summary>
    public double? Rpm { get; init; }

    /// <summary>Opening looked at, degrees from seated; null as for the speed.</summary>
    public double? Throttle { get; init; }

    /// <summary>The map shown.</summary>
    public MapShown Show { get; init; }

    /// <summary>The part under the hand, its name in the document, or null.</summary>
    public string? Part { get; init; }

    /// <summary>The trial size of that part as typed, or null for the one fitted.</summary>
    public string? Value { get; init; }

    /// <summary>Other parts that stay changed on this trial.</summary>
    public IReadOnlyList<TrialChange> Also { get; init; } = [];

    /// <summary>Whether the trial changes the barrel looked at only, and not all alike.</summary>
    public bool OneBarrel { get; init; }

    /// <summary>All changes of the trial, the part under the hand last.</summary>
    public IReadOnlyList<TrialChange> Changes =>
        Part is not null && !string.IsNullOrWhiteSpace(Value) ? [.. Also, new TrialChange(Part, Value)] : Also;

    /// <summary>The same with another part under the hand; the trial size of the last one stays.</summary>
    /// <param name="part">The part.</param>
    /// <returns>The changed state.</returns>
    public BenchQuery Pick(string part) => this with
    {
        Part = part,
        Value = Changes.LastOrDefault(c => string.Equals(c.Part, part, StringComparison.Ordinal))?.Value,
        Also = [.. Changes.Where(c => !string.Equals(c.Part, part, StringComparison.Ordinal))],
    };

    /// <summary>The same without any trial.</summary>
    /// <returns>The changed state.</returns>
    public BenchQuery Plain() => this with { Value = null, Also = [], Show = MapShown.Fitted };

    /// <summary>The query part of the address, with its question mark.</summary>
    /// <returns>A text such as <c>?barrel=1&amp;rpm=2750&amp;throttle=11</c>.</returns>
    public string ToAddress() => "?" + string.Join('&', Pairs().Select(p => $"{p.Name}={Uri.EscapeDataString(p.Value)}"));

    /// <summary>The parts of the query, for a form that changes some of them.</summary>
    /// <returns>Names and values that differ from an empty query, and the barrel.</returns>
    public IEnumerable<(string Name, string Value)> Pairs()
    {
        (string Name, string? Value)[] single =
        [
            ("barrel", Number(Barrel)),
            ("rpm", Rpm is { } rpm ? Number(rpm) : null),
            ("throttle", Throttle is { } throttle ? Number(throttle) : null),
            ("show", Show == MapShown.Fitted ? null : Show.ToString().ToLowerInvariant()),
            ("part", Part),
            ("value", string.IsNullOrWhiteSpace(Value) ? null : Value),
            ("for", OneBarrel ? "one" : null),
        ];
        return single.Where(p => p.Value is not null).Select(p => (p.Name, p.Value!))
            .Concat(Also.Select(c => ("also", $"{c.Part}:{c.Value}")));
    }

    private static string Number(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);
}
