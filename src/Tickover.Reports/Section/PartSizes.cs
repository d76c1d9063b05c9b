using Tickover.Workshop.Cars;

namespace Tickover.Reports.Section;

/// <summary>Names and sizes of the parts, as the drawing and the list below it show them.</summary>
internal static class PartSizes
{
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

    internal static IReadOnlyList<SectionPart> For(BarrelSectionView view)
    {
        var barrel = view.Barrel;
        return
        [
            .. Figured.Select((part, index) => new SectionPart(
                part.Key, index + 1, part.Name,
                view.TrialSizes.TryGetValue(part.Key, out var trial) ? $"{Size(barrel, part.Key)} → {trial}" : Size(barrel, part.Key),
                string.Equals(view.SelectedKey, part.Key, StringComparison.Ordinal))),
        ];
    }

    /// <summary>A figure's value in SI; null where the car has none.</summary>
    internal static double? Si(CarBarrel barrel, string key) =>
        barrel.Figures.FirstOrDefault(f => string.Equals(f.Definition.Key, key, StringComparison.Ordinal))?.Si;

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

    private static string Counted(int count, string one, string more) =>
        count == 0 ? Shown.Nothing : $"{count} {(count == 1 ? one : more)}";
}
