using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Parts;

namespace Tickover.Workshop.Linkages.Reading;

/// <summary>Puts shafts and links in order from the pedal outwards, and says what is joined wrongly.</summary>
internal static class LinkOrder
{
    /// <summary>The pedal's shaft first; each link after the one that turns its driving shaft.</summary>
    public static (IReadOnlyList<ShaftPart> Shafts, IReadOnlyList<(string Path, LinkPart Link)> Links) FromPedal(
        int pedal, IReadOnlyList<ShaftPart> shafts, List<(string Path, LinkPart Link)> links, Faults faults)
    {
        var driven = new HashSet<int> { pedal };
        var ordered = new List<(string Path, LinkPart Link)>();
        var left = new List<(string Path, LinkPart Link)>(links);
        while (left.Find(l => driven.Contains(l.Link.From)) is { Link: not null } next)
        {
            left.Remove(next);
            if (driven.Add(next.Link.To))
            {
                ordered.Add(next);
            }
            else
            {
                faults.Add(next.Path, $"\"{shafts[next.Link.To].Name}\" is turned already, and \"{next.Link.Name}\" turns it again", "each shaft turned by one rod or coupling, named from the pedal outwards", "Swap from and to, or take out the one that is not there.");
            }
        }

        foreach (var (path, link) in left)
        {
            faults.Add(path, $"Nothing turns \"{shafts[link.From].Name}\", which \"{link.Name}\" goes from", "a way from the pedal's shaft to every shaft", "Swap from and to, or describe the rod that turns it.");
        }

        if (left.Count == 0)
        {
            foreach (var alone in Enumerable.Range(0, shafts.Count).Where(i => !driven.Contains(i)))
            {
                faults.Add(shafts[alone].Throttle is null ? "shafts" : "carburettors", $"Nothing turns \"{shafts[alone].Name}\"", "a rod or a coupling to every shaft", "Describe the rod that turns it, or take it out.");
            }
        }

        int[] order = [pedal, .. Enumerable.Range(0, shafts.Count).Where(i => i != pedal)];
        return ([.. order.Select(i => shafts[i])], [.. ordered.Select(l => (l.Path, l.Link with { From = Array.IndexOf(order, l.Link.From), To = Array.IndexOf(order, l.Link.To) }))]);
    }
}
