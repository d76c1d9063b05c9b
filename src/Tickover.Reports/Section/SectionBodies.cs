using Tickover.Reports.Charts;

namespace Tickover.Reports.Section;

/// <summary>Draws the body of each part.</summary>
internal static class SectionBodies
{
    private static readonly Dictionary<string, Action<IDrawing, BarrelSectionView, SectionGeometry, bool>> Bodies =
        new(StringComparer.Ordinal)
        {
            [PartKeys.AirCorrector] = (d, _, _, selected) => MainSideDrawing.Corrector(d, selected),
            [PartKeys.EmulsionHoles] = (d, view, at, selected) => MainSideDrawing.Tube(d, at, view.Barrel, selected),
            [PartKeys.MainJet] = (d, _, at, selected) => MainSideDrawing.MainJet(d, at, selected),
            [PartKeys.FloatLevel] = (d, _, at, selected) => MainSideDrawing.Chamber(d, at, selected),
            [PartKeys.IdleBleed] = (d, _, _, selected) => IdleSideDrawing.IdleBleed(d, selected),
            [PartKeys.IdleJet] = (d, _, _, selected) => IdleSideDrawing.IdleJet(d, selected),
            [PartKeys.PumpJet] = (d, view, _, selected) => IdleSideDrawing.Pump(
                d, selected, PartSizes.Si(view.Barrel, PartKeys.PumpJet) > 0, view.Point?.PumpFuelKilogramsPerSecond > 0),
            [PartKeys.Choke] = (d, _, at, selected) => AirWayDrawing.Choke(d, at, selected),
            [PartKeys.Nozzle] = (d, view, at, selected) =>
                AirWayDrawing.AuxiliaryVenturi(d, at, selected, view.Point?.MainFuelKilogramsPerSecond > 0),
            [PartKeys.ProgressionHoles] = (d, view, at, selected) => IdleSideDrawing.Progression(d, at, view.Barrel, selected),
            [PartKeys.ThrottleBore] = (d, _, at, selected) => AirWayDrawing.Plate(d, at, selected),
            [PartKeys.ScrewTurns] = (d, view, at, selected) =>
                IdleSideDrawing.MixtureScrew(d, at, PartSizes.Si(view.Barrel, PartKeys.ScrewTurns) ?? 0, selected),
        };

    internal static void Draw(IDrawing drawing, BarrelSectionView view, SectionGeometry at, SectionPart part) =>
        Bodies[part.Key](drawing, view, at, part.Selected);
}
