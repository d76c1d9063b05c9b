using Tickover.Reports.Mixture;
using Tickover.Reports.Section;
using Tickover.Workshop.Cars;
using Tickover.Workshop.StripDown.Cards;

namespace Tickover.Web.StripDown;

/// <summary>A set of carburettors on the section of one barrel: what most have at each part, and what differs marked.</summary>
internal static class SetDrawing
{
    private static readonly (string Part, string AsFound, string AsLeft)[] Parts =
    [
        ("barrel.airCorrector", "airCorrector", "airCorrector"),
        ("barrel.emulsionHoles", "emulsionTube", "emulsionTube"),
        ("barrel.mainJet", "mainJet", "mainJet"),
        ("barrel.floatLevel", "floatDry", "floatWet"),
        ("barrel.idleBleed", "idleBleed", "idleBleed"),
        ("barrel.pumpJet", "pumpJet", "pumpJet"),
        ("barrel.idleJet", "idleJet", "idleJet"),
        ("barrel.nozzle", "auxiliaryVenturi", "auxiliaryVenturi"),
        ("barrel.choke", "choke", "choke"),
        ("barrel.progressionHoles", "passagesProved", "passagesProved"),
        ("barrel.throttleBore", "plateSeating", "plateGap"),
        ("barrel.screwTurns", "mixtureTurns", "mixtureTurns"),
    ];

    /// <summary>What the drawing shows.</summary>
    /// <param name="car">The car, for the shape of its barrels.</param>
    /// <param name="sheet">The set.</param>
    /// <param name="size">The size.</param>
    /// <param name="address">Where a measure's row is.</param>
    public static BarrelSectionView View(Car car, SetSheet sheet, PictureSize size, Func<string, string> address)
    {
        var rows = sheet.Rows.DistinctBy(r => r.Measure.Key, StringComparer.Ordinal).ToDictionary(r => r.Measure.Key, StringComparer.Ordinal);
        var found = Parts.ToDictionary(p => p.Part, p => rows.GetValueOrDefault(sheet.Moment is Workshop.Visits.Moment.AsLeft ? p.AsLeft : p.AsFound), StringComparer.Ordinal);
        return new BarrelSectionView
        {
            Car = car,
            BarrelNumber = car.Barrels[0].Number,
            Size = size,
            Sizes = found.ToDictionary(f => f.Key, f => Words(f.Value), StringComparer.Ordinal),
            Marked = [.. found.Where(f => f.Value?.Standing is SetStanding.Differs).Select(f => f.Key)],
            PartAddress = key => found.GetValueOrDefault(key) is { } row ? address(row.Measure.Key) : "#set",
            IdPrefix = size == PictureSize.Full ? "set" : "set-phone",
        };
    }

    // Short enough for the drawing: the list below has it all.
    private static string Words(SetRow? row) => row switch
    {
        null or { Standing: SetStanding.NotNoted } => "–",
        { Standing: SetStanding.Differs, IsRange: false, Usual: { Length: > 0 } usual, Odd: [var one] } => $"{usual}, one {one.Text}",
        { Standing: SetStanding.Differs } => "differ",
        { IsRange: true } => "see list",
        _ => row.Usual,
    };
}
