using Tickover.Physics.Linkages;
using Tickover.Workshop.Linkages.Parts;
using Tickover.Workshop.Linkages.Working;

namespace Tickover.Workshop.Linkages;

/// <summary>Where the parts of a linkage stand at one position of the pedal, for drawing it; mm.</summary>
public sealed record LinkageStance
{
    /// <summary>For each shaft, for each of its levers: the foot on the shaft and the ball.</summary>
    public required IReadOnlyList<IReadOnlyList<(Place Foot, Place Ball)>> Levers { get; init; }

    /// <summary>For each shaft, the two ends of its drawn length.</summary>
    public required IReadOnlyList<(Place From, Place To)> Shafts { get; init; }

    /// <summary>For each shaft, the centres of its plates; empty where it has none.</summary>
    public required IReadOnlyList<IReadOnlyList<Place>> Plates { get; init; }

    internal static LinkageStance Of(LinkageMotion motion, double pedalDegrees)
    {
        var turned = motion.Pose(pedalDegrees).Turned;
        var linkage = motion.Linkage;
        return new LinkageStance
        {
            Levers = [.. linkage.Shafts.Select((s, i) => (IReadOnlyList<(Place, Place)>)[.. s.Levers.Select(l => Lever(s, l, double.IsNaN(turned[i]) ? 0 : turned[i]))])],
            Shafts = [.. linkage.Shafts.Select((s, i) => Ends(linkage, s, i))],
            Plates = [.. linkage.Shafts.Select(s => (IReadOnlyList<Place>)[.. (s.Throttle?.PlatesAlongMillimetres ?? []).Select(a => At(LinkageTrains.Line(s).At(a / 1000)))])],
        };
    }

    private static (Place Foot, Place Ball) Lever(ShaftPart shaft, LeverPart lever, double turned)
    {
        var (line, arm) = (LinkageTrains.Line(shaft), LinkageTrains.Lever(lever));
        return (At(line.At(arm.AlongMetres)), At(line.Ball(arm, turned)));
    }

    // As long as what is on it, and a little more.
    private static (Place From, Place To) Ends(Linkage linkage, ShaftPart shaft, int index)
    {
        const double over = 6;
        double[] along =
        [
            0,
            .. shaft.Levers.Select(l => l.AlongMillimetres),
            .. (shaft.Throttle?.PlatesAlongMillimetres ?? []).SelectMany(p => new[] { p - shaft.Throttle!.BoreMillimetres / 2, p + shaft.Throttle.BoreMillimetres / 2 }),
            .. linkage.Links.OfType<CouplingPart>().SelectMany(c => Held(c, index)),
        ];
        var line = LinkageTrains.Line(shaft);
        return (At(line.At((along.Min() - over) / 1000)), At(line.At((along.Max() + over) / 1000)));
    }

    private static IEnumerable<double> Held(CouplingPart coupling, int shaft) =>
        coupling.From == shaft ? [coupling.FromAlongMillimetres] : coupling.To == shaft ? [coupling.ToAlongMillimetres] : [];

    private static Place At(SpaceVector metres) => new(metres.X * 1000, metres.Y * 1000, metres.Z * 1000);
}
