using System.Globalization;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Practice.Virtual;

/// <summary>What can be seen of rods and stops with the engine off.</summary>
internal static class RodLook
{
    private const double RadiansPerDegree = Math.PI / 180;
    private const double RodEye = 0.05;
    private const double StopEye = 0.01;
    private const double ThinStrip = 0.05;

    /// <summary>Carburettors at the two ends of a rod, from 0; null where there is no such rod.</summary>
    public static (int From, int To)? Ends(EnginePlan plan, string key)
    {
        if (plan.Find(key) is not { Kind: AdjusterKind.LinkRod or AdjusterKind.BankRod or AdjusterKind.CouplingScrew } rod || plan.Layout is PlanLayout.InLine or PlanLayout.MotorcycleFour)
        {
            return null;
        }

        var to = plan.Carburettors.First(c => c.Barrels.Contains(rod.Barrels[0])).Number - 1;
        return (rod.Kind == AdjusterKind.BankRod ? 0 : to - 1, to);
    }

    /// <summary>How much a rod is too long for the way between two carburettors on their stops, mm, to a twentieth.</summary>
    public static double TooLong(VirtualEngine engine, (int From, int To) ends, Dice eye)
    {
        var (from, to) = (engine.Carburettors[ends.From], engine.Carburettors[ends.To]);
        var lever = engine.Plan.Layout == PlanLayout.ConstantDepression ? Sizes.ClampLever : Sizes.RodLever;

        // what lost motion is meant to be there is taken up half way
        var ahead = to.Ahead(0) + (to.Play / 2) - from.Ahead(0) - (from.Play / 2);
        return Rounded(((ahead - (to.Stop!.Effect - from.Stop!.Effect)) * RadiansPerDegree * lever) + eye.Normal(RodEye));
    }

    /// <summary>Gap at a stop, mm; 0 where it touches.</summary>
    public static double StopGap(VirtualEngine engine, VirtualCarburettor one, Dice eye)
    {
        var opening = engine.Linkage.Opening(one.Number - 1, engine.Linkage.Rest());
        var gap = Math.Max(0, opening - one.Stop!.Effect) * RadiansPerDegree * Sizes.StopLever;
        return gap < ThinStrip / 2 ? 0 : Math.Max(ThinStrip, Rounded(gap + eye.Normal(StopEye)));
    }

    /// <summary>What was seen of a rod, in words.</summary>
    public static string Words(double tooLong) => tooLong switch
    {
        > 0 => string.Create(CultureInfo.InvariantCulture, $"{tooLong:0.00} mm too long."),
        < 0 => string.Create(CultureInfo.InvariantCulture, $"{-tooLong:0.00} mm too short."),
        _ => "It drops on without moving a plate.",
    };

    private static double Rounded(double millimetres) => Math.Round(millimetres / ThinStrip) * ThinStrip;
}
