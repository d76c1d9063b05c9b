using Tickover.Workshop.Cars.Catalogue;

namespace Tickover.Workshop.Cars.Reading;

/// <summary>Figures that are each in range and cannot be together.</summary>
internal static class Contradictions
{
    private const double LargestSpindlePerBore = 0.5;
    private const double LargestNozzlePerChoke = 0.6;
    private const double LargestValveAreaPerBoreArea = 0.75;

    /// <summary>Checks the engine's figures.</summary>
    /// <param name="figures">The figures.</param>
    /// <param name="faults">Where faults go.</param>
    public static void CheckEngine(FigureResolver figures, Faults faults)
    {
        var pair = new Pair(figures, faults);
        pair.Check("engine.rodLength", "engine.stroke", (rod, stroke) => rod <= stroke / 2, "is not longer than half the stroke", "longer than half the stroke; usually 1.5 to 2 × the stroke");
        pair.Check("engine.inletValveLift", "engine.inletValveDiameter", (lift, valve) => lift >= valve, "is as large as the valve itself", "usually a quarter of the valve's diameter");
        pair.Check("engine.exhaustValveLift", "engine.exhaustValveDiameter", (lift, valve) => lift >= valve, "is as large as the valve itself", "usually a quarter of the valve's diameter");
        CheckValves(figures, faults);
        if (figures.Place.Shared && !figures.IsDoubtful("engine.sharedVolume") && figures.Si("engine.sharedVolume") <= 0)
        {
            faults.Add("engine.sharedVolume", "The manifold is shared and has no volume", "above 0 cm³", "Give the volume between throttle plates and runners, or take it out for the default.");
        }
    }

    /// <summary>Checks one barrel.</summary>
    /// <param name="barrel">The barrel as the document has it.</param>
    /// <param name="figures">Its figures.</param>
    /// <param name="faults">Where faults go.</param>
    public static void CheckBarrel(BarrelSource barrel, FigureResolver figures, Faults faults)
    {
        var pair = new Pair(figures, faults);
        pair.Check("barrel.choke", "barrel.throttleBore", (choke, bore) => choke >= bore, "is not narrower than the throttle bore", "usually 0.75 to 0.85 × the throttle bore");
        pair.Check("barrel.spindleDiameter", "barrel.throttleBore", (spindle, bore) => spindle >= LargestSpindlePerBore * bore, "takes half the throttle bore or more", "usually 0.2 × the throttle bore");
        pair.Check("barrel.nozzle", "barrel.choke", (nozzle, choke) => nozzle > LargestNozzlePerChoke * choke, "fills the choke", "at most 0.6 × the choke; usually 3.5 to 5 mm");
        CheckEmulsion(barrel, figures, faults);
        CheckProgression(barrel, figures, faults);
    }

    private static void CheckValves(FigureResolver figures, Faults faults)
    {
        string[] keys = ["engine.inletValveDiameter", "engine.exhaustValveDiameter", "engine.inletValves", "engine.exhaustValves", "engine.bore"];
        if (keys.Any(figures.IsDoubtful) || !keys.Any(figures.IsGiven))
        {
            return;
        }

        var inlet = figures.Si(keys[2]) * Math.Pow(figures.Si(keys[0]), 2);
        var exhaust = figures.Si(keys[3]) * Math.Pow(figures.Si(keys[1]), 2);
        var share = (inlet + exhaust) / Math.Pow(figures.Si("engine.bore"), 2);
        if (share > LargestValveAreaPerBoreArea)
        {
            var path = figures.PathOf(keys[0]) ?? figures.PathOf(keys[1]) ?? figures.PathOf(keys[2]) ?? "engine.bore";
            faults.Add(path, $"The valves take {FigureText.Show(Measure.Percent, share)} of the bore's area", "at most 75 %; usually some 35 %", "Check valve diameters, their number and the bore.");
        }
    }

    private static void CheckEmulsion(BarrelSource barrel, FigureResolver figures, Faults faults)
    {
        var path = barrel.Settings.EmulsionHolesPath;
        if (path is null || figures.IsDoubtful("barrel.wellDepth"))
        {
            return;
        }

        var depth = figures.Si("barrel.wellDepth");
        var below = barrel.Settings.EmulsionHoles!.Where(r => r.DepthMetres > depth).ToArray();
        if (below.Length > 0)
        {
            faults.Add(path, $"A row at {FigureText.Show(Measure.Length, below[0].DepthMetres)} is below the bottom of the well", $"at most {FigureText.Show(Measure.Length, depth)}, the well's depth", "Check the row's depth or give \"wellDepth\".");
        }
    }

    private static void CheckProgression(BarrelSource barrel, FigureResolver figures, Faults faults)
    {
        var path = barrel.Settings.ProgressionHolesPath;
        if (path is null || figures.IsDoubtful("barrel.throttleBore") || figures.IsDoubtful("barrel.closedAngle"))
        {
            return;
        }

        // The plate's edge swings on half the bore: wide open it stands this far above its seat.
        var reach = figures.Si("barrel.throttleBore") / 2 * (1 - Math.Sin(figures.Si("barrel.closedAngle")));
        var beyond = barrel.Settings.ProgressionHoles!.Where(h => h.PositionMetres > reach).ToArray();
        if (beyond.Length > 0)
        {
            faults.Add(path, $"The plate's edge never reaches a hole at {FigureText.Show(Measure.Length, beyond[0].PositionMetres)}", $"at most {FigureText.Show(Measure.Length, reach)} above the seated edge in this bore", "Measure from the edge of the seated plate along the bore.");
        }
    }

    private sealed record Pair(FigureResolver Figures, Faults Faults)
    {
        /// <summary>Two figures that must fit; nothing is said about values that nobody gave or that are faulty already.</summary>
        public void Check(string key, string other, Func<double, double, bool> isWrong, string problem, string allowed)
        {
            var path = Figures.PathOf(key) ?? Figures.PathOf(other);
            if (path is null || Figures.IsDoubtful(key) || Figures.IsDoubtful(other) || !isWrong(Figures.Si(key), Figures.Si(other)))
            {
                return;
            }

            var first = FigureCatalogue.Find(key)!.Definition;
            var second = FigureCatalogue.Find(other)!.Definition;
            var shown = FigureText.Show(first.Measure, Figures.Si(key));
            var against = FigureText.Show(second.Measure, Figures.Si(other));
            Faults.Add(path, $"\"{first.Label}\" of {shown} {problem} ({second.Label}: {against})", allowed, $"Correct \"{first.Label}\" or \"{second.Label}\".");
        }
    }
}
