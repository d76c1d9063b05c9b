using System.Globalization;
using Tickover.Physics.Walls;

namespace Tickover.Workshop.Walls.Working;

/// <summary>What two metals do to each other, and what to put between them.</summary>
internal static class CoupleWriter
{
    // From a damp film in which oxygen comes fast, to half a millimetre of still water.
    private const double ThinWaterMetres = 0.1e-3;
    private const double ThickWaterMetres = 0.5e-3;
    private const char Thin = '\u202F';

    public static CoupleFinding Of(WallSurvey survey, WallContact contact)
    {
        var couple = GalvanicCouple.Of(survey.Metal, contact.Metal, survey.Surroundings);
        double? effect = contact is { ContactSquareCentimetres: { } there, BareSquareCentimetres: { } bare }
            ? couple.WallIsEaten ? GalvanicCouple.AreaEffect(there, bare) : GalvanicCouple.AreaEffect(bare, there)
            : null;
        (double, double)? rate = couple.WallIsEaten && effect is { } times ? (Rate(survey.Metal, ThickWaterMetres) * times, Rate(survey.Metal, ThinWaterMetres) * times) : null;
        return new CoupleFinding(contact, couple, effect, rate, Words(couple, contact, survey, effect));
    }

    // Even loss by all the oxygen that still water lets through, mm a year.
    private static double Rate(Metal metal, double water)
    {
        var properties = MetalTable.Of(metal);
        return 1000 * WallsConstants.SecondsPerYear
            * Faraday.PenetrationRate(Faraday.OxygenLimit(water), properties.EquivalentWeightKilogramsPerMole, properties.DensityKilogramsPerCubicMetre);
    }

    private static string Words(GalvanicCouple couple, WallContact contact, WallSurvey survey, double? effect)
    {
        var (wall, other) = (MetalWords.Of(survey.Metal), MetalWords.Of(contact.Metal));
        var difference = string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(couple.DifferenceVolts):0.00}{Thin}V apart, {couple.LimitVolts:0.00}{Thin}V let pass");
        if (couple.IsCompatible)
        {
            return $"{Capital(other)} on {wall}: {difference}. Let pass; keep it dry all the same.";
        }

        var eaten = couple.WallIsEaten
            ? $"Wet, the wall is eaten{Coat(survey.Metal)}"
            : $"Wet, the {contact.Where} is eaten and spares the wall until its metal is gone";
        var times = effect is > 2 and { } n ? string.Create(CultureInfo.InvariantCulture, $", some {n:0} times as fast as alone for the areas") : string.Empty;
        return $"{Capital(other)} on {wall}: {difference}. {eaten}{times}. {Isolation(couple)}";
    }

    private static string Coat(Metal metal) => MetalTable.Of(metal) is { IsCoated: true, SurfaceIndexVolts: var surface, BaseIndexVolts: var under } && surface < under
        ? ", at the pinholes of its coat first"
        : string.Empty;

    private static string Isolation(GalvanicCouple couple) => couple.WallIsEaten
        ? "Keep them apart: fuel-proof rubber or a nylon strip that holds no water (no felt, no cork), sleeves and washers of nylon under bolts, paint or sealant on the nobler metal first, a way for water to run off, and metal nearer to the wall's where it can be changed. See that the tank keeps its earth."
        : "Renew the part in time, or keep the two apart the same way; paint the wall, not the part alone.";

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
