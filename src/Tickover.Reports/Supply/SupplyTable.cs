using Tickover.Physics.Supply;
using Tickover.Workshop.Supply;

namespace Tickover.Reports.Supply;

/// <summary>The picture of a supply as a table: a row for every part.</summary>
public static class SupplyTable
{
    /// <summary>Makes the table.</summary>
    /// <param name="view">What the picture shows.</param>
    /// <returns>The table, the tank's end first.</returns>
    public static PictureTable Of(SupplyView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        var one = view.Case;
        return new PictureTable(
            $"{view.Analysis.Supply.Name}, {one.Name}: flow, pressure and warmth behind each part",
            ["Part", "Flow", "Takes", "Gauge reads", "Above boiling", "Fuel"],
            [.. one.Point.Parts.Select(part => Row(view.Analysis.Supply.Unit, part, one.Point.Duty.AirPascals))]);
    }

    private static string[] Row(PressureUnit unit, PartPoint part, double air) =>
    [
        part.Part.Name,
        SupplyWords.LitresHour(part.VolumeFlow),
        SupplyWords.Pressure(unit, part.DropPascals),
        SupplyWords.Pressure(unit, part.StaticPascals - air),
        SupplyWords.Pressure(unit, part.VapourMarginPascals),
        SupplyWords.Celsius(part.OutletKelvin),
    ];
}
