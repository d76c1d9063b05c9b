using Tickover.Workshop.Cars;

namespace Tickover.Reports.Section;

/// <summary>Names and sizes of the parts, as the drawing and the list below it show them.</summary>
internal static class PartSizes
{
    private const string Blanks = " \u202F";

    private static readonly (string Key, string Name)[] Figured =
    [
        (PartKeys.AirCorrector, "Air corrector"),
        (PartKeys.EmulsionHoles, "Emulsion tube"),
        (PartKeys.MainJet, "Main jet"),
        (PartKeys.FloatLevel, "Fuel level"),
        (PartKeys.IdleBleed, "Idle bleed"),
        (PartKeys.PumpJet, "Pump jet"),
        (PartKeys.IdleJet, "Idle jet"),
        (PartKeys.Nozzle, "Aux. venturi"),
        (PartKeys.Choke, "Choke"),
        (PartKeys.ProgressionHoles, "Progression"),
        (PartKeys.ThrottleBore, "Throttle"),
        (PartKeys.ScrewTurns, "Mixture screw"),
    ];

    internal static IReadOnlyList<SectionPart> For(BarrelSectionView view) =>
    [
        .. Figured.Select((part, index) => new SectionPart(
            part.Key, index + 1, part.Name, Text(view, part.Key),
            string.Equals(view.SelectedKey, part.Key, StringComparison.Ordinal) || view.Marked.Contains(part.Key, StringComparer.Ordinal))),
    ];

    /// <summary>A figure's value in SI; null where the car has none.</summary>
    internal static double? Si(CarBarrel barrel, string key) =>
        barrel.Figures.FirstOrDefault(f => string.Equals(f.Definition.Key, key, StringComparison.Ordinal))?.Si;

    private static string Text(BarrelSectionView view, string key) => view.Sizes is { } sizes
        ? sizes.GetValueOrDefault(key, Shown.Nothing)
        : Changed(Size(view.Fitted, key), Size(view.Barrel, key));

    private static string Size(CarBarrel barrel, string key) => key switch
    {
        PartKeys.EmulsionHoles => Counted(barrel.EmulsionHoles.Count, "row", "rows"),
        PartKeys.ProgressionHoles => Counted(barrel.ProgressionHoles.Count, "hole", "holes"),
        _ => Si(barrel, key) is { } value ? Written(key, value) : Shown.Nothing,
    };

    private static string Written(string key, double value) => key switch
    {
        PartKeys.FloatLevel or PartKeys.Nozzle or PartKeys.Choke or PartKeys.ThrottleBore => Shown.Millimetres(value),
        PartKeys.ScrewTurns => $"{Shown.Turns(value)} out",
        _ => value > 0 ? Shown.Jet(value) : Shown.Nothing,
    };

    // The unit once, behind the second figure: "36 → 34 mm"
    private static string Changed(string fitted, string drawn)
    {
        if (string.Equals(fitted, drawn, StringComparison.Ordinal))
        {
            return fitted;
        }

        var at = drawn.AsSpan().LastIndexOfAny(Blanks);
        var unit = at >= 0 ? drawn[at..] : string.Empty;
        var number = unit.Length > 0 && fitted.EndsWith(unit, StringComparison.Ordinal) ? fitted[..^unit.Length] : fitted;
        return $"{number} → {drawn}";
    }

    private static string Counted(int count, string one, string more) =>
        count == 0 ? Shown.Nothing : $"{count} {(count == 1 ? one : more)}";
}
