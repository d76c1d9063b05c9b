using Tickover.Physics.Sending;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Gauges.Reading;

/// <summary>Reads tanks and the pipe between them.</summary>
internal static class TankReader
{
    private const double Milli = 1e-3;
    private const double SquareCentimetre = 1e-4;
    private const int MostHeights = 40;

    public static LinkedTank? Tank(ObjectReader root, string name, TankSide side)
    {
        if (GaugeReader.Member(root, name, GaugeForm.Tank, $"\"{name}\": {{ \"heights\": [0, 250], \"areas\": [1000, 1000], \"across\": 340, \"along\": 320, \"place\": [0, 520, 0] }}") is not { } reader)
        {
            return null;
        }

        var table = Table(reader);
        var (across, along) = (reader.Needed("across", GaugeForm.Inside), reader.Needed("along", GaugeForm.Inside));
        if (reader["place"] is null)
        {
            reader.Faults.Missing(reader.At("place"), "The tank's place", "mm of the middle of its floor ahead, to the left and up", "\"place\": [0, 520, 0]");
        }

        var place = reader.Numbers("place", (3, 3), GaugeForm.Place);
        var damping = reader.Number("damping", GaugeForm.Damping) is { } percent ? percent / 100 : LinkedTank.DefaultDamping;
        if (table is null || place is null)
        {
            return null;
        }

        if (side is TankSide.Left ? place[1] <= 0 : place[1] >= 0)
        {
            reader.Faults.Add(reader.At("place"), FormattableString.Invariant($"The {name} tank lies {place[1]} mm to the left"), side is TankSide.Left ? "above 0 for the left tank" : "below 0 for the right tank", "Lengths to the left count up, to the right below 0.");
        }

        return new LinkedTank
        {
            Table = table,
            AheadMetres = place[0] * Milli,
            LeftMetres = place[1] * Milli,
            FloorMetres = place[2] * Milli,
            WidthMetres = across * Milli,
            LengthMetres = along * Milli,
            Damping = damping,
        };
    }

    public static CrossPipe? Pipe(ObjectReader root)
    {
        if (GaugeReader.Member(root, "pipe", GaugeForm.Pipe, "\"pipe\": { \"bore\": 10, \"length\": 900 }") is not { } reader)
        {
            return null;
        }

        var (bore, length) = (reader.Needed("bore", GaugeForm.Bore), reader.Needed("length", GaugeForm.PipeLength));
        var losses = reader.Number("losses", GaugeForm.Losses) ?? CrossPipe.EndLosses;
        var inward = reader.Number("inward", GaugeForm.Place) ?? 0;
        return new CrossPipe { BoreMetres = bore * Milli, LengthMetres = length * Milli, LossToLeft = losses, LossToRight = losses, MouthInwardMetres = inward * Milli };
    }

    private static readonly string[] TableNames = ["heights", "areas"];

    private static LevelTable? Table(ObjectReader reader)
    {
        foreach (var name in TableNames.Where(n => reader[n] is null))
        {
            reader.Faults.Missing(reader.At(name), $"The list \"{name}\"", "two or more numbers, from the floor up", $"\"{name}\": [{(name is "areas" ? "1000, 1000" : "0, 250")}]");
        }

        var (heights, areas) = (reader.Numbers("heights", (2, MostHeights), GaugeForm.Height), reader.Numbers("areas", (2, MostHeights), GaugeForm.Area));
        if (heights is null || areas is null)
        {
            return null;
        }

        if (heights.Count != areas.Count)
        {
            reader.Faults.Add(reader.At("areas"), $"{heights.Count} heights and {areas.Count} areas", "as many areas as heights", "Give the area of the surface at each height.");
            return null;
        }

        if (heights[0] != 0 || heights.Zip(heights.Skip(1)).Any(p => p.Second <= p.First) || areas.Zip(areas.Skip(1)).Any(p => p.First + p.Second <= 0))
        {
            reader.Faults.Add(reader.At("heights"), "The heights do not rise from 0, or there is no area between two of them", "0 first, each above the one before", "Measure from the tank's floor upwards.");
            return null;
        }

        return LevelTable.FromAreas([.. heights.Select(h => h * Milli)], [.. areas.Select(a => a * SquareCentimetre)]);
    }
}
