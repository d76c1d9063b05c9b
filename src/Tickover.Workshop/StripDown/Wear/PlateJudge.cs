using Tickover.Physics.Inspection;

namespace Tickover.Workshop.StripDown.Wear;

/// <summary>Judges plates and the bores they shut.</summary>
/// <param name="sheet">The sheet.</param>
/// <param name="idle">The engine at idle.</param>
internal sealed class PlateJudge(WearSheet sheet, WearIdle idle)
{
    private const double MuchOfIdle = 0.5;                  // light that takes half the idle air leaves the stop screw nothing to set (assumed)
    private const double Percent = 100;

    /// <summary>All of a barrel.</summary>
    /// <param name="barrel">The barrel.</param>
    /// <param name="middleAngle">Closed angle in the middle of the set, degrees; null where none was measured.</param>
    /// <returns>What was judged.</returns>
    public IEnumerable<WearItem> Of(WornBarrel barrel, double? middleAngle)
    {
        if (barrel.LightShare is { } share)
        {
            yield return Light(barrel, share);
        }

        if (barrel.ClosedDegrees is { } angle && middleAngle is { } middle)
        {
            yield return Angle(barrel, angle, middle);
        }

        if (barrel.BoreAcross is { } across)
        {
            yield return Bore(barrel, across - barrel.Bore);
        }

        if (barrel.StopTouches is { } touches)
        {
            yield return Item(barrel, WearKind.Stop, touches ? WearGrade.Good : WearGrade.Bad, touches ? "touches with the rods off" : "does not touch with the rods off", "touches (common practice)",
                touches ? "The plate is held by its stop." : "Something else holds the plate: it sticks in the bore, the spindle is bent, or a spring is weak. No screw sets this barrel until that is found.");
        }
    }

    private static WearItem Item(WornBarrel barrel, WearKind kind, WearGrade grade, string measured, string limit, string words) =>
        new() { Where = $"barrel {barrel.Where}", Kind = kind, Grade = grade, Measured = measured, Limit = limit, Words = words };

    private WearItem Light(WornBarrel barrel, double share)
    {
        var air = idle.Past(barrel, PlateLight.Area(barrel.Bore * 1e-3, share, barrel.LightGap * 1e-3));
        var part = idle.Share(air);
        var hair = barrel.LightGap <= sheet.Limits.Light || share == 0;
        var grade = part > MuchOfIdle ? WearGrade.Bad : hair ? WearGrade.Good : WearGrade.Worn;
        var words = share == 0 ? "Shuts dark all round."
            : SheetText.Line($"Shut, it passes {air:0.00} kg/h, {Percent * part:0.#} % of its idle air.") + (grade switch
            {
                WearGrade.Good => "",
                WearGrade.Worn => " Loosen the plate's screws, let it centre itself in the shut bore, and look again.",
                _ => " The stop screw has nothing left to set: centre the plate, or find out whether it is the plate of this bore.",
            });
        return Item(barrel, WearKind.Light, grade, SheetText.Line($"{Percent * share:0} % of the rim, {barrel.LightGap:0.00} mm"), SheetText.Line($"a hair of light, {sheet.Limits.Light:0.00} mm ({(sheet.Limits.Light == new WearLimits().Light ? "common practice" : "written in the sheet")})"), words) with
        {
            KilogramsAnHour = air,
            Share = part,
        };
    }

    private WearItem Angle(WornBarrel barrel, double angle, double middle)
    {
        var off = angle - middle;
        var fits = Math.Abs(off) <= sheet.Limits.Angle;
        return Item(barrel, WearKind.Angle, fits ? WearGrade.Good : WearGrade.Bad, SheetText.Line($"{angle:0.0}°, {off:+0.0;−0.0;0.0}° off the middle"), SheetText.Line($"within {sheet.Limits.Angle:0.#}° of the set (assumed)"),
            fits ? "Like the rest of the set." : "Another plate, or one put in the wrong way round: the progression holes meet its edge at another opening.");
    }

    private WearItem Bore(WornBarrel barrel, double oval)
    {
        var fits = Math.Abs(oval) <= sheet.Limits.Oval;
        return Item(barrel, WearKind.Bore, fits ? WearGrade.Good : WearGrade.Worn, SheetText.Line($"{barrel.Bore:0.00} mm along, {oval:+0.00;−0.00;0.00} mm across the spindle"), SheetText.Line($"within {sheet.Limits.Oval:0.00} mm (assumed)"),
            fits ? "Round where the plate shuts." : "Worn by the plate's edges: it will not shut dark however it is centred.");
    }
}
