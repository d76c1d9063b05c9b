using System.Text.Json;
using Tickover.Web.Visits;
using Tickover.Workshop.Balance.Plans;

namespace Tickover.Web.Worksheets;

/// <summary>Makes a plan's document from the few figures of the form, so that nobody has to write one beside the car.</summary>
internal static class PlanFields
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    /// <summary>The document: cylinders in order to barrels in order; with two banks the first half of the carburettors stands on the first.</summary>
    /// <param name="fields">The form; figures that cannot be read become 0, which the plan's own reader complains of.</param>
    /// <returns>The document.</returns>
    public static string Document(FormFields fields)
    {
        var (cylinders, carburettors, each) = (Whole(fields, "cylinders"), Math.Clamp(Whole(fields, "carburettors"), 0, PlanDocument.MostBarrels), Math.Clamp(Whole(fields, "barrels"), 0, PlanDocument.MostBarrels));
        var barrels = Math.Max(1, carburettors * each);
        var layout = fields.Text("layout");
        var isTwoBanks = string.Equals(layout, "two banks", StringComparison.Ordinal);
        return JsonSerializer.Serialize(
            new
            {
                format = PlanDocument.Format,
                name = fields.Text("name"),
                layout,
                cylinders,
                sweptVolume = Number(fields, "sweptVolume"),
                throttleBore = Number(fields, "throttleBore"),
                closedAngle = Number(fields, "closedAngle"),
                idleSpeed = Number(fields, "idleSpeed"),
                mixtureScrews = fields.Ticked("airScrews") ? "air" : "emulsion",
                bypass = fields.Ticked("bypass"),
                carburettors = Enumerable.Range(0, carburettors).Select(c => new
                {
                    name = Name(c, carburettors),
                    bank = isTwoBanks && c >= (carburettors + 1) / 2 ? 2 : 1,
                    barrels = Enumerable.Range(c * each, each).Select(b => Feeds(b, barrels, cylinders)),
                }),
            },
            Indented);
    }

    private static string Name(int index, int count) => count switch
    {
        1 => "carburettor",
        2 => index == 0 ? "front" : "rear",
        3 => index switch { 0 => "front", 1 => "middle", _ => "rear" },
        _ => (index + 1).ToString(System.Globalization.CultureInfo.InvariantCulture),
    };

    // Six cylinders on two barrels: 1 2 3 and 4 5 6.
    private static IEnumerable<int> Feeds(int barrel, int barrels, int cylinders)
    {
        var (from, to) = (barrel * cylinders / barrels, (barrel + 1) * cylinders / barrels);
        return Enumerable.Range(from + 1, Math.Max(0, to - from));
    }

    private static int Whole(FormFields fields, string name) => (int)Math.Clamp(Number(fields, name), 0, short.MaxValue);

    private static double Number(FormFields fields, string name) =>
        double.TryParse(fields.Text(name).Replace(',', '.'), System.Globalization.CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : 0;
}
