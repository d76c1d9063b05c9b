using System.Globalization;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Bench;

/// <summary>Full-load air/fuel ratio of engines whose chokes and jets follow the workshop's rules of thumb; nothing is fitted.</summary>
internal static class RulesOfThumbStudy
{
    private const double Richest = 11, Leanest = 15;
    private const double TorqueSpeedPart = 0.65;       // of the speed of peak power, common practice

    private static readonly double[] Swept = [250, 300, 350, 400, 450, 500, 550, 600];     // cm³ a cylinder
    private static readonly double[] Speeds = [5000, 5500, 6000, 6500, 7000, 7500];        // rpm at peak power

    internal static int Run()
    {
        var all = new List<double>();
        Console.WriteLine("| cm³ | " + string.Join(" | ", Speeds.Select(n => n.ToString("F0", CultureInfo.InvariantCulture))) + " |");
        Console.WriteLine("|--:|" + string.Concat(Speeds.Select(_ => "--:|")));
        foreach (var swept in Swept)
        {
            var row = Speeds.Select(n => Point(swept, n)).ToList();
            all.AddRange(row.SelectMany(r => new[] { r.Power, r.Torque }));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {swept:F0} | ") + string.Join(
                " | ", row.Select(r => string.Create(CultureInfo.InvariantCulture, $"{r.Power:F1}, {r.Torque:F1}"))) + " |");
        }

        all.Sort();
        var share = all.Count(a => a is >= Richest and <= Leanest) * 100.0 / all.Count;
        Console.WriteLine();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{all.Count} figures: {all[0]:F1} to {all[^1]:F1}, median {all[all.Count / 2]:F1}; {share:F0} % between {Richest} and {Leanest}."));
        return 0;
    }

    private static (double Power, double Torque) Point(double swept, double rpm)
    {
        var car = Engine(swept, rpm);
        var speeds = new[] { Math.Round(rpm * TorqueSpeedPart), rpm };
        var points = MixtureSurvey.Run(car, new SurveyGrid { SpeedsRpm = speeds, ThrottleDegrees = [80] }).Map.Barrels[0].Points;
        return (points[1, 0].AirFuelRatio, points[0, 0].AirFuelRatio);
    }

    // A square four with a barrel a cylinder; choke 20·√(litres a cylinder × rpm/1000), main jet 4 × choke, corrector main + 50,
    // all common practice. Valves and what else the document leaves out are the product's own defaults.
    private static Car Engine(double swept, double rpm)
    {
        var bore = Math.Cbrt(4 * swept * 1000 / Math.PI);
        var choke = 20 * Math.Sqrt(swept / 1000 * rpm / 1000);
        var main = Math.Round(4 * choke);
        var longer = (rpm - 5000) / 2500 * 15;           // degrees of earlier opening and later closing, assumed
        return Samples.Parse(string.Create(CultureInfo.InvariantCulture, $$"""
            {
              "format": "tickover-car-1", "name": "Rule of thumb",
              "engine": {
                "layout": "inline four", "cylinders": 4, "firingOrder": [1, 3, 4, 2],
                "bore": "{{bore:F2}} mm", "stroke": "{{bore:F2}} mm", "compressionRatio": 9.5, "peakPowerSpeed": "{{rpm:F0}} rpm",
                "inletOpensBefore": "{{20 + longer:F0}}°", "inletClosesAfter": "{{60 + longer:F0}}°",
                "exhaustOpensBefore": "{{60 + longer:F0}}°", "exhaustClosesAfter": "{{20 + longer:F0}}°"
              },
              "fuel": "E5",
              "barrels": {
                "throttleBore": "{{choke / 0.8:F1}} mm", "choke": "{{choke:F1}} mm", "floatLevel": "6 mm",
                "mainJet": {{main:F0}}, "airCorrector": {{main + 50:F0}}
              },
              "carburettors": [
                { "barrels": [{ "feeds": [1] }, { "feeds": [2] }] },
                { "barrels": [{ "feeds": [3] }, { "feeds": [4] }] }
              ]
            }
            """));
    }
}
