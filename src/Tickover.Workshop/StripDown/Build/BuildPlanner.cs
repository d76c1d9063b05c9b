using Tickover.Physics.Flow;
using Tickover.Physics.Inspection;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.StripDown.Build;

/// <summary>Works out bench settings from the car and the breathing and metering models.</summary>
public static class BuildPlanner
{
    private const double Degrees = 180 / Math.PI;
    private const double FewestTurns = 0.25;
    private const double MostTurns = 5;
    private const double Quarter = 0.25;
    private const double Millimetres = 1000;
    private const int Halvings = 7;                         // to a twenty-fifth of a turn; it is set by quarters

    /// <summary>Works them out.</summary>
    /// <param name="sheet">What they are worked out from.</param>
    /// <returns>The settings.</returns>
    public static BuildAnswer Of(BuildSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var way = sheet.Car.ToEngineSpec().Barrels[0].AirWay;
        var plate = new ThrottlePlate { BoreMetres = way.ThrottleBoreMetres, ClosedAngleRadians = way.ClosedAngleRadians, SpindleDiameterMetres = way.SpindleDiameterMetres };
        var opening = sheet.Idle.PlateDegrees!.Value;
        var gap = PlateLight.Rod(plate, opening / Degrees) * Millimetres;
        var (turns, reached) = Screw(sheet, opening);
        var rods = Rods(sheet, plate, opening);
        var off = rods.Where(r => r.IsOutside).ToList();
        var verdict = turns is null ? SheetText.Line($"No turn of the mixture screws gives λ {sheet.Lambda:0.00} at idle: the nearest is {reached:0.00}. Look at idle jet and bleed first.")
            : off.Count > 0 ? $"Set the rods to one length first: {string.Join(", ", off.Select(r => r.Rod.Where))}."
            : SheetText.Line($"Plates on a {gap:0.00} mm feeler, mixture screws {turns:0.##} turns out, by-passes shut.");
        return new BuildAnswer(opening, gap, turns, [.. Settings(sheet, (opening, gap), turns, reached)], rods, verdict);
    }

    private static IEnumerable<BuildSetting> Settings(BuildSheet sheet, (double Opening, double Gap) plate, double? turns, double reached)
    {
        yield return new BuildSetting("By-pass screws", "shut", "common practice (trade report 1.13)", "Turned in by hand until they just touch. They only add air: they come last, on the running engine.");
        yield return new BuildSetting(
            "Throttle plates", SheetText.Line($"{plate.Gap:0.00} mm at the edge, {plate.Opening:0.0}° off the seat"), $"idle {sheet.Idle.Origin}",
            "A feeler or wire of this size square to the spindle, between the plate's edge and the bore: every plate lets it just pass, and both plates of a spindle alike.");
        if (sheet is { StopArm: { } arm, StopPitch: { } pitch })
        {
            yield return new BuildSetting(
                "Stop screws", SheetText.Line($"{arm * Math.Tan(plate.Opening / Degrees) / pitch:0.0#} turns from just touching"), SheetText.Line($"the plate's angle over {arm:0.#} mm, {pitch:0.##} mm a turn"),
                "From the plate shut in its bore and the screw just touching. The feeler counts before the turns.");
        }

        yield return new BuildSetting(
            "Mixture screws", turns is { } t ? SheetText.Line($"{t:0.##} turns out") : "cannot be told", SheetText.Line($"the metering model for λ {sheet.Lambda:0.00} at this idle{(turns is null ? "" : SheetText.Line($", which it meets at {reached:0.00}"))}; not fitted to this car, good to some half a turn (assumed)"),
            "From lightly seated, all alike. Set on the running engine afterwards.");
        yield return new BuildSetting(
            "Link rods", sheet.Rods.Count > 1 ? SheetText.Line($"{Middle.Of(sheet.Rods.Select(r => r.Millimetres)):0.00} mm, within {sheet.RodLimit:0.##} mm") : "all of one length", "common practice (trade report 1.14)",
            "Fitted last, with every plate on its stop, so that no rod loads a plate. Then: press to the floor and let go, ten times; every plate must snap shut.");
    }

    // the screw is turned in the model until the mixture is as wanted: further out is richer
    private static (double? Turns, double Reached) Screw(BuildSheet sheet, double opening)
    {
        var grid = new SurveyGrid { SpeedsRpm = [sheet.Idle.Rpm], ThrottleDegrees = [opening] };
        var survey = MixtureSurvey.Run(sheet.Car, grid);
        double At(double turns) => CarDocument.Change(sheet.Car, "barrel.screwTurns", SheetText.Line($"{turns:0.###}")).Car is { } car && survey.Trial(car).Map.ForBarrel(1).Points[0, 0].Lambda is > 0 and var lambda ? lambda : double.PositiveInfinity;
        var (low, high) = (FewestTurns, MostTurns);
        if (At(low) < sheet.Lambda || At(high) > sheet.Lambda)
        {
            return (null, At(low) < sheet.Lambda ? At(low) : At(high));
        }

        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = At(middle) > sheet.Lambda ? (middle, high) : (low, middle);
        }

        var set = Math.Round((low + high) / 2 / Quarter) * Quarter;
        return (set, At(set));
    }

    private static List<BuildRodVerdict> Rods(BuildSheet sheet, ThrottlePlate plate, double opening)
    {
        if (sheet.Rods.Count < 2)
        {
            return [];
        }

        var middle = Middle.Of(sheet.Rods.Select(r => r.Millimetres));
        double Area(double radians) => plate.OpenArea(plate.ClosedAngleRadians + radians);
        return [.. sheet.Rods.Select(r =>
        {
            var off = r.Millimetres - middle;
            var share = sheet.RodArm is { } arm ? (Area((opening / Degrees) + (Math.Abs(off) / arm)) / Area(opening / Degrees)) - 1 : (double?)null;
            return new BuildRodVerdict(r, off, share, Math.Abs(off) > sheet.RodLimit);
        })];
    }
}
