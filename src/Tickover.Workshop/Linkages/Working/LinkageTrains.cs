using Tickover.Physics.Linkages;
using Tickover.Workshop.Linkages.Parts;

namespace Tickover.Workshop.Linkages.Working;

/// <summary>Takes a linkage over the border: mm and degrees into the physics' metres and radians.</summary>
internal static class LinkageTrains
{
    private const double Millimetre = 1e-3;

    public static LinkageTrain Of(Linkage linkage) => new(
        [.. linkage.Shafts.Select(Shaft)],
        [.. linkage.Links.Select(l => Member(linkage, l))]);

    public static ShaftLine Line(ShaftPart shaft) => new(Metres(shaft.At), new SpaceVector(shaft.Axis.Ahead, shaft.Axis.Left, shaft.Axis.Up));

    public static Lever Lever(LeverPart lever) => new(lever.LengthMillimetres * Millimetre, double.DegreesToRadians(lever.AngleDegrees), lever.AlongMillimetres * Millimetre);

    /// <summary>Length at which a rod drops on with everything as drawn, mm.</summary>
    public static double DropOn(Linkage linkage, RodPart rod)
    {
        var (from, to) = (linkage.Shafts[rod.From], linkage.Shafts[rod.To]);
        return (Line(to).Ball(Lever(to.Levers[rod.ToLever]), 0) - Line(from).Ball(Lever(from.Levers[rod.FromLever]), 0)).Length / Millimetre;
    }

    /// <summary>The linkage as it is warm: shafts on the manifold moved away from the point that stays, rods longer.</summary>
    public static Linkage Warm(Linkage linkage, WarmthPart warmth)
    {
        Place Grown(Place at)
        {
            var growth = LinkageMaterials.Growth(Metres(at) - Metres(warmth.Stays), LinkageMaterials.AluminiumExpansionPerKelvin, warmth.ManifoldRiseKelvins);
            return new Place(at.Ahead + growth.X / Millimetre, at.Left + growth.Y / Millimetre, at.Up + growth.Z / Millimetre);
        }

        var longer = 1 + LinkageMaterials.SteelExpansionPerKelvin * warmth.RodRiseKelvins;
        return linkage with
        {
            Shafts = [.. linkage.Shafts.Select(s => s.Mount is ShaftMount.Manifold ? s with { At = Grown(s.At) } : s)],
            Links = [.. linkage.Links.Select(l => l is RodPart rod ? rod with { LengthMillimetres = rod.LengthMillimetres * longer } : l)],
        };
    }

    private static SpaceVector Metres(Place place) => new(place.Ahead * Millimetre, place.Left * Millimetre, place.Up * Millimetre);

    private static LinkageShaft Shaft(ShaftPart shaft) => new()
    {
        Line = Line(shaft),
        DiameterMetres = (shaft.DiameterMillimetres ?? 0) * Millimetre,
        ShearModulusPascals = shaft.Metal is ShaftMetal.Brass ? LinkageMaterials.BrassShearModulusPascals : LinkageMaterials.SteelShearModulusPascals,
        Spring = shaft.Throttle is { Spring: { } spring } throttle
            ? new ReturnSpring(spring.TorqueNewtonMetres, double.RadiansToDegrees(spring.RateNewtonMetresPerDegree), spring.AlongMillimetres * Millimetre, (int)throttle.Opens)
            : null,
    };

    private static LinkageMember Member(Linkage linkage, LinkPart link) => link switch
    {
        RodPart rod => new RodMember(
            rod.From, rod.To, Lever(linkage.Shafts[rod.From].Levers[rod.FromLever]), Lever(linkage.Shafts[rod.To].Levers[rod.ToLever]), rod.LengthMillimetres * Millimetre),
        CouplingPart coupling => new CouplingMember(
            coupling.From,
            coupling.To,
            double.DegreesToRadians(coupling.AheadDegrees) * (int)(linkage.Shafts[coupling.To].Throttle?.Opens ?? TurningSense.Clockwise),
            coupling.FromAlongMillimetres * Millimetre,
            coupling.ToAlongMillimetres * Millimetre),
        _ => throw new ArgumentException($"{link.GetType().Name} is no link known here", nameof(link)),
    };
}
