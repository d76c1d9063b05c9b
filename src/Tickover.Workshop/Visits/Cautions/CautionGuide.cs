using System.Globalization;
using System.Text;
using Tickover.Workshop.Visits.Authorities;
using Tickover.Workshop.Visits.Gates;

namespace Tickover.Workshop.Visits.Cautions;

/// <summary>Writes the page on cautions, taps and whom to defer to, from the catalogues.</summary>
public static class CautionGuide
{
    /// <summary>Writes it.</summary>
    /// <returns>Markdown with a final newline.</returns>
    public static string Generate()
    {
        var text = new StringBuilder();
        Line(text, "# Cautions, taps and whom to defer to");
        Line(text, "");
        Line(text, "Written from the catalogues by the tests; do not edit. Practice of the trade unless a source is named.");
        Line(text, Caution.Closing);
        Cautions(text);
        Gates(text);
        Countries(text);
        return text.ToString();
    }

    private static void Cautions(StringBuilder text)
    {
        Line(text, "\n## Before a hazardous step");
        foreach (var caution in CautionCatalogue.All)
        {
            Line(text, $"\n### {caution.Step}\n");
            Line(text, $"Stage {caution.Stage.Words()}, key `{caution.Key}`. **{caution.First}.** {caution.Why}\n");
            foreach (var (condition, index) in caution.Conditions.Select((c, i) => (c, i)))
            {
                Line(text, string.Create(CultureInfo.InvariantCulture, $"{index + 1}. {condition}"));
            }

            Line(text, $"\n{Tablet(caution.Tablet)} When back, enter {caution.EnterAfterwards}. Defer to: {string.Join(", ", caution.Topics.Select(t => t.Words().ToLowerInvariant()))}.");
        }
    }

    private static void Gates(StringBuilder text)
    {
        Line(text, "\n## Taps of the route");
        foreach (var gate in GateCatalogue.All)
        {
            Line(text, $"\n### Before {gate.Before}: {gate.Name}\n\n| check | how to look | otherwise | undone by | source |\n|---|---|---|---|---|");
            foreach (var check in gate.Checks)
            {
                Line(text, $"| {check.Words} | {check.LookFor} | {check.Otherwise} | {Undone(check.StaleAfter)} | {check.Source} |");
            }
        }
    }

    private static void Countries(StringBuilder text)
    {
        Line(text, "\n## Whom to defer to");
        Line(text, "\n“Seen” means that title and body were seen in the source named; editions change, so read the one in force. The workshop can put its own words in place of any line.");
        foreach (var country in AuthorityCatalogue.Countries)
        {
            Line(text, $"\n### {AuthorityCatalogue.NameOf(country)}\n\n| topic | law or guidance | body | source | looked up |\n|---|---|---|---|---|");
            foreach (var line in AuthorityCatalogue.Of(country))
            {
                Line(text, $"| {line.Topic.Words()} | {line.Name} | {line.Body} | {line.Source} | {(line.Mark == AuthorityMark.Verified ? "seen" : "from memory, check the edition")} |");
            }
        }
    }

    private static string Tablet(TabletPlace place) => place switch
    {
        TabletPlace.OutsideZone => "Tablets and telephones stay outside the vapour zone.",
        TabletPlace.PutAside => "Put the tablet aside: the step needs both hands.",
        _ => "The tablet may stay in the hand of whoever writes.",
    };

    private static string Undone(Disturbance by) => by == Disturbance.None ? "nothing the record tells" : string.Join(", ", Enum.GetValues<Disturbance>().Where(d => d != Disturbance.None && by.HasFlag(d)).Select(d => d switch
    {
        Disturbance.FuelOrLinkage => "fuel system or linkage opened",
        Disturbance.Engine => "engine or ignition parts",
        Disturbance.Carburettors => "carburettors opened",
        Disturbance.Settings => "settings or jets changed",
        _ => "the end of the day",
    }));

    private static void Line(StringBuilder text, string line) => text.Append(line).Append('\n');
}
