using System.Globalization;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Parts;
using Tickover.Workshop.Linkages.Working;

namespace Tickover.Workshop.Linkages.Reading;

/// <summary>Looks whether the parts go together: rods reach, coupled spindles lie in line; rods not measured get the length that drops on.</summary>
internal static class LinkFit
{
    private const double InLineMillimetres = 5;
    private const double InLineDegrees = 5;

    public static Linkage Settled(Linkage linkage, IReadOnlyList<string> paths, Faults faults)
    {
        var settled = linkage with { Links = [.. linkage.Links.Select(l => l is RodPart { IsFitted: true } rod ? rod with { LengthMillimetres = LinkageTrains.DropOn(linkage, rod) } : l)] };
        for (var i = 0; i < settled.Links.Count; i++)
        {
            if (settled.Links[i] is CouplingPart coupling)
            {
                CheckInLine(settled, coupling, paths[i], faults);
            }
        }

        var train = LinkageTrains.Of(settled);
        if (train.Pose(0).Locked is { } locked)
        {
            CheckReach(settled, (RodPart)settled.Links[locked], train.Misfit(locked, train.Pose(0).Turned[settled.Links[locked].From]), paths[locked], faults);
        }

        return settled;
    }

    private static void CheckReach(Linkage linkage, RodPart rod, double misfitMetres, string path, Faults faults)
    {
        var drop = LinkageTrains.DropOn(linkage, rod);
        faults.Add(
            $"{path}.length",
            string.Create(CultureInfo.InvariantCulture, $"\"{rod.Name}\" is {Math.Abs(misfitMetres) * 1000:0.0} mm too {(misfitMetres > 0 ? "long" : "short")} to go on at all"),
            string.Create(CultureInfo.InvariantCulture, $"about {drop:0.0} mm, at which it drops on with the plates on their stops"),
            "Measure the rod between the centres of its balls, and the places of its two shafts, again.");
    }

    private static void CheckInLine(Linkage linkage, CouplingPart coupling, string path, Faults faults)
    {
        var (a, b) = (LinkageTrains.Line(linkage.Shafts[coupling.From]), LinkageTrains.Line(linkage.Shafts[coupling.To]));
        var sideways = a.Direction.Cross(b.Origin - a.Origin).Length * 1000;
        var askew = double.RadiansToDegrees(Math.Asin(Math.Min(1, a.Direction.Cross(b.Direction).Length)));
        if (sideways > InLineMillimetres || askew > InLineDegrees)
        {
            faults.Add(
                path,
                string.Create(CultureInfo.InvariantCulture, $"The spindles of \"{coupling.Name}\" are {sideways:0.#} mm out of line and {askew:0.#}° askew"),
                string.Create(CultureInfo.InvariantCulture, $"within {InLineMillimetres} mm and {InLineDegrees}°"),
                "Mend the places, or describe a rod between levers instead.");
        }
    }
}
