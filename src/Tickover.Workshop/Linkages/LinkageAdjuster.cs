using Tickover.Workshop.Linkages.Parts;

namespace Tickover.Workshop.Linkages;

/// <summary>Something that can be set on a linkage.</summary>
public sealed record LinkageAdjuster
{
    /// <summary>What it is.</summary>
    public required LinkageAdjusterKind Kind { get; init; }

    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>Number of its link, or of its shaft for a clamp.</summary>
    public required int Index { get; init; }

    /// <summary>Number of the lever on its shaft, for a clamp.</summary>
    public int Lever { get; init; }

    /// <summary>Where it stands: mm for a rod, else degrees.</summary>
    public required double Value { get; init; }

    /// <summary>Smallest step it can be set by, in the unit of the value.</summary>
    public required double Step { get; init; }

    /// <summary>Turns of a thread for one step; zero for a clamp.</summary>
    public required double TurnsPerStep { get; init; }

    /// <summary>Everything that can be set on a linkage.</summary>
    /// <param name="linkage">The linkage.</param>
    /// <returns>Rods and couplings from the pedal outwards, then clamps.</returns>
    public static IReadOnlyList<LinkageAdjuster> Of(Linkage linkage)
    {
        ArgumentNullException.ThrowIfNull(linkage);
        var links = linkage.Links.Select((link, i) => link switch
        {
            RodPart { Thread: { } thread } rod => new LinkageAdjuster
            {
                Kind = LinkageAdjusterKind.Rod,
                Name = rod.Name,
                Index = i,
                Value = rod.LengthMillimetres,
                Step = thread.StepTurns * thread.MillimetresPerTurn,
                TurnsPerStep = thread.StepTurns,
            },
            CouplingPart { Screw: { } screw } coupling => new LinkageAdjuster
            {
                Kind = LinkageAdjusterKind.Coupling,
                Name = coupling.Name,
                Index = i,
                Value = coupling.AheadDegrees,
                Step = CouplingScrew.StepTurns * screw.DegreesPerTurn,
                TurnsPerStep = CouplingScrew.StepTurns,
            },
            _ => null,
        }).OfType<LinkageAdjuster>();
        return [.. links, .. linkage.Shafts.SelectMany((shaft, s) => shaft.Levers.Select((lever, l) => (lever, l)).Where(x => x.lever.IsClamped).Select(x => Clamp(shaft, s, x.lever, x.l)))];
    }

    /// <summary>The linkage with this set otherwise.</summary>
    /// <param name="linkage">The linkage it is of.</param>
    /// <param name="more">How much more: mm for a rod, else degrees.</param>
    /// <returns>The linkage changed.</returns>
    public Linkage Set(Linkage linkage, double more)
    {
        ArgumentNullException.ThrowIfNull(linkage);
        if (Kind is LinkageAdjusterKind.Clamp)
        {
            return linkage with { Shafts = [.. linkage.Shafts.Select((s, i) => i == Index ? Turned(s, more) : s)] };
        }

        return linkage with
        {
            Links =
            [
                .. linkage.Links.Select((l, i) => i != Index ? l : l switch
                {
                    RodPart rod => rod with { LengthMillimetres = rod.LengthMillimetres + more },
                    CouplingPart coupling => coupling with { AheadDegrees = coupling.AheadDegrees + more },
                    _ => l,
                }),
            ],
        };
    }

    private ShaftPart Turned(ShaftPart shaft, double more) =>
        shaft with { Levers = [.. shaft.Levers.Select((l, i) => i == Lever ? l with { AngleDegrees = l.AngleDegrees + more } : l)] };

    private static LinkageAdjuster Clamp(ShaftPart shaft, int index, LeverPart lever, int number)
    {
        const double readable = 0.1; // degrees; it is set by the plate resting on its stop, not by the figure
        return new LinkageAdjuster
        {
            Kind = LinkageAdjusterKind.Clamp,
            Name = $"{shaft.Name}/{lever.Name}",
            Index = index,
            Lever = number,
            Value = lever.AngleDegrees,
            Step = readable,
            TurnsPerStep = 0,
        };
    }
}
