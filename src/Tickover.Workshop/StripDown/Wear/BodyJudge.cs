using Tickover.Physics.Inspection;

namespace Tickover.Workshop.StripDown.Wear;

/// <summary>Judges flanges and needle valves.</summary>
/// <param name="sheet">The sheet.</param>
/// <param name="idle">The engine at idle.</param>
internal sealed class BodyJudge(WearSheet sheet, WearIdle idle)
{
    private const double Percent = 100;
    private const double UsualDensity = 745;                // kg/m³
    private const double Hour = 3600;
    private const double MillilitresACubicMetre = 1e6;

    /// <summary>A gap under a flange.</summary>
    /// <param name="body">The carburettor.</param>
    /// <param name="gap">The gap.</param>
    /// <returns>What it is.</returns>
    public WearItem Of(WornBody body, FlangeGap gap)
    {
        var air = Air(gap);
        var fits = gap.GapMillimetres <= sheet.Limits.Flange;
        return new WearItem
        {
            Where = gap.Barrel.Length > 0 ? $"{body.Where}, barrel {gap.Barrel}" : body.Where,
            Kind = WearKind.Flange,
            Grade = fits ? WearGrade.Good : WearGrade.Bad,
            Measured = SheetText.Line($"{gap.GapMillimetres:0.00} mm over {gap.SpanMillimetres:0} mm"),
            Limit = SheetText.Line($"{sheet.Limits.Flange:0.00} mm ({(sheet.Limits.Flange == new WearLimits().Flange ? "common practice" : "written in the sheet")})"),
            KilogramsAnHour = air,
            Share = idle.Share(air),
            Words = fits ? "A gasket takes this up."
                : SheetText.Line($"If the gasket does not take it up it draws {air:0.00} kg/h, {Percent * idle.Share(air):0.#} % of a barrel's idle air. Face it flat; do not pull it flat with the nuts: that bends the body and binds the spindle."),
        };
    }

    /// <summary>Air under a flange whose gasket does not take the gap up.</summary>
    /// <param name="gap">The gap.</param>
    /// <returns>kg/h.</returns>
    public double Air(FlangeGap gap) => idle.Through(NarrowGap.Bowed(gap.GapMillimetres * 1e-3, gap.SpanMillimetres * 1e-3, gap.LandMillimetres * 1e-3));

    /// <summary>A needle valve.</summary>
    /// <param name="body">The carburettor.</param>
    /// <param name="test">Its test.</param>
    /// <returns>What it is.</returns>
    public WearItem Of(WornBody body, NeedleTest test)
    {
        var limits = sheet.Limits;
        var seeps = test.MillilitresAnHour ?? 0;
        var fits = seeps <= limits.Seep && (test.HoldSeconds ?? double.PositiveInfinity) >= limits.Hold;
        var measured = test.MillilitresAnHour is { } rate ? SheetText.Line($"{test.Measured}: {rate:0.0} ml/h{(test.HoldSeconds is { } held ? SheetText.Line($"; held {held:0} s") : "")}") : test.Measured;
        return new WearItem
        {
            Where = body.Where,
            Kind = WearKind.Needle,
            Grade = fits ? WearGrade.Good : WearGrade.Bad,
            Measured = measured,
            Limit = SheetText.Line($"holds {limits.Hold:0} s (common practice), seeps no more than {limits.Seep:0.#} ml/h (assumed)"),
            Words = Words(body, test, fits),
        };
    }

    private string Words(WornBody body, NeedleTest test, bool fits)
    {
        if (test.MillilitresAnHour is not > 0)
        {
            return fits ? "Shuts." : "Does not hold: clean needle and seat, look for a ring worn into the tip, and try again before buying one.";
        }

        var seeps = test.MillilitresAnHour.Value;
        var hole = SeepingValve.HoleArea(seeps / MillilitresACubicMetre / Hour, test.HeadMillimetres * 1e-3);
        var barrels = Math.Max(1, sheet.Barrels.Count(b => string.Equals(b.Carburettor, body.Where, StringComparison.Ordinal)));
        var idleFuel = barrels * sheet.Idle.FuelKilogramsPerSecond * Hour / UsualDensity * MillilitresACubicMetre;
        var like = SheetText.Line($"As much as a hole of {1e3 * Math.Sqrt(4 / Math.PI * hole):0.000} mm, {Percent * seeps / idleFuel:0.#} % of what this carburettor takes at idle");
        return fits ? $"{like}." : $"{like}: running, the level creeps up a little; standing with head in the line, the chamber fills and runs over into the engine. New needle and seat, together.";
    }
}
