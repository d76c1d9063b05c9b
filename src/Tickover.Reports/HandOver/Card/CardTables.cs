using Tickover.Reports.Paper;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Reports.HandOver.Card;

/// <summary>What is set, barrel by barrel and carburettor by carburettor, and for the car.</summary>
internal static class CardTables
{
    private static readonly string[] PerBarrel =
    [
        "choke", "auxiliaryVenturi", "mainJet", "airCorrector", "emulsionTube", "idleJet", "idleBleed", "pumpJet", "backBleed",
        "mixtureTurns", "bypassTurns", "idleAirflow", "airflow1500", "airflow2500",
    ];

    private static readonly string[] PerCarburettor =
    [
        "carburettorNumber", "needleValve", "meteringNeedle", "floatDry", "floatWet", "floatDatum", "jetNutFlats", "stopTurns", "rodLength", "couplingClearance", "damperOil", "carburettorAirflow",
    ];

    private static readonly string[] Engine = ["idleSpeed", "idleTiming", "raisedTiming", "dwell", "plug", "plugGap", "inletClearance", "exhaustClearance", "lambdaIdle", "carbonMonoxide"];

    private static readonly string[] Fuel = ["fuelPressure", "usableVolume", "litresAtEmptyMark", "reserve", "filter", "hoseFitted", "airTemperature", "airPressure", "altitudeSet"];

    internal static IEnumerable<Block> Of(Telling t, CardFigures figures)
    {
        foreach (var block in Places(t, figures, PlaceKind.Barrel, PerBarrel).Concat(Places(t, figures, PlaceKind.Carburettor, PerCarburettor)))
        {
            yield return block;
        }

        yield return new SideBySide(
            [new Heading(2, t.Say("Engine and mixture")), .. Lines(t, figures, Engine)],
            [new Heading(2, t.Say("Fuel and the day it was set")), .. Lines(t, figures, Fuel)]);
    }

    private static IEnumerable<Block> Places(Telling t, CardFigures figures, PlaceKind kind, string[] keys)
    {
        var places = figures.Places(kind);
        List<IReadOnlyList<Prose>> rows = [];
        foreach (var measure in keys.Select(k => MeasureCatalogue.Find(k)!))
        {
            var texts = places.Select(p => figures.At(measure, p)).ToList();
            if (texts.All(x => x.Length == 0))
            {
                figures.Wanting.Add(t.Label(measure));
                continue;
            }

            var unit = figures.Unit(measure, t.Label(measure)) is { Length: > 0 } shown ? $", {shown}" : "";
            rows.Add([Prose.Of(t.Label(measure) + unit), .. texts.Select(x => x.Length > 0 ? Prose.Bold(x) : Prose.Of("\u2013"))]);
        }

        if (rows.Count > 0)
        {
            var word = kind.ToString();
            yield return new Table(t.Say($"By {word.ToLowerInvariant()}"), [new Column(t.Say(word)), .. places.Select(p => Column.OfFigures(p.Name))], rows);
        }
    }

    private static IEnumerable<Block> Lines(Telling t, CardFigures figures, string[] keys)
    {
        var facts = keys.Select(k => (Measure: MeasureCatalogue.Find(k)!, Text: figures.Line(k))).Where(x => x.Text.Length > 0)
            .Select(x => new Fact(t.Label(x.Measure), Prose.Bold(x.Text))).ToList();
        yield return facts.Count > 0 ? new Facts(facts) : t.Tell("Nothing of this is in the record.");
    }
}
