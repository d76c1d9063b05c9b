using System.Globalization;

namespace Tickover.Physics.Gauges;

/// <summary>A family of senders and the gauges made for them, by its resistance at either end.</summary>
/// <param name="Key">Short name: empty to full in ohms.</param>
/// <param name="EmptyOhms">Resistance when empty, Ω.</param>
/// <param name="FullOhms">Resistance when full, Ω.</param>
/// <param name="Thermal">Whether its gauges work by a heated strip behind a voltage stabiliser as a rule.</param>
public sealed record SenderFamily(string Key, double EmptyOhms, double FullOhms, bool Thermal = false)
{
    /// <summary>A sender by its ends alone.</summary>
    /// <param name="emptyOhms">Resistance when empty, Ω.</param>
    /// <param name="fullOhms">Resistance when full, Ω; not the same.</param>
    public SenderFamily(double emptyOhms, double fullOhms)
        : this(string.Create(CultureInfo.InvariantCulture, $"{emptyOhms:0.#}-{fullOhms:0.#}"), emptyOhms, fullOhms)
    {
    }

    /// <summary>A sender by its resistance over the travel: senders for heated-strip gauges change most near empty, so that the needle moves evenly (250 Ω empty, 67 half, 19 full is met; common practice, from memory).</summary>
    /// <param name="ohms">Resistances at equal steps of the float's travel from empty to full, Ω; two or more, the ends not the same, straight between them.</param>
    /// <returns>The sender.</returns>
    /// <exception cref="ArgumentException">There are fewer than two.</exception>
    public static SenderFamily Wound(IReadOnlyList<double> ohms)
    {
        ArgumentNullException.ThrowIfNull(ohms);
        return ohms.Count < 2
            ? throw new ArgumentException($"{ohms.Count} resistances; a winding has two ends.", nameof(ohms))
            : new SenderFamily(ohms[0], ohms[^1]) { WindingOhms = ohms.Count == 2 ? null : [.. ohms] };
    }

    /// <summary>Families met on older cars: owners' tables and common practice, none of them a standard.</summary>
    /// <remarks>240 to 33 Ω and 0 to 90 Ω from service texts; the others from owners' lists and common practice. Edges differ by some per cent from maker to maker.</remarks>
    public static IReadOnlyList<SenderFamily> All { get; } =
    [
        new("240-33", 240, 33),
        new("0-90", 0, 90),
        new("90-0", 90, 0),
        new("0-30", 0, 30),
        new("73-10", 73, 10),
        new("10-180", 10, 180),
        new("0-190", 0, 190),
        new("thermal 270-20", 270, 20, true),
    ];

    /// <summary>Resistances at equal steps of the float's travel from empty to full, Ω, where the winding is shaped; null where it is even.</summary>
    public IReadOnlyList<double>? WindingOhms { get; private init; }

    /// <summary>Whether empty is the high resistance: an open wire then reads empty, a short full.</summary>
    public bool Falls => EmptyOhms > FullOhms;

    /// <summary>From end to end, Ω.</summary>
    public double SpanOhms => Math.Abs(FullOhms - EmptyOhms);

    /// <summary>Resistance at a part of the float's travel.</summary>
    /// <param name="travel">0 empty, 1 full; a shaped winding ends there.</param>
    /// <returns>Ω.</returns>
    public double OhmsAt(double travel)
    {
        if (WindingOhms is not { } ohms)
        {
            return EmptyOhms + (FullOhms - EmptyOhms) * travel; // gauges (1)
        }

        var place = Math.Clamp(travel, 0, 1) * (ohms.Count - 1);
        var step = Math.Min((int)place, ohms.Count - 2);
        return ohms[step] + (place - step) * (ohms[step + 1] - ohms[step]); // gauges (1)
    }

    /// <summary>The family of a name.</summary>
    /// <param name="key">Its short name.</param>
    /// <returns>The family, or null.</returns>
    public static SenderFamily? Of(string key) => All.FirstOrDefault(f => string.Equals(f.Key, key, StringComparison.OrdinalIgnoreCase));
}
