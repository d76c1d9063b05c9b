using Tickover.Physics.Flow;

namespace Tickover.Physics.Metering;

/// <summary>Air way of corrector and uncovered holes over the level in the emulsion tube.</summary>
internal sealed class EmulsionTube
{
    private readonly MainCircuit _main;

    internal EmulsionTube(MainCircuit main)
    {
        _main = main;
        CorrectorArea = main.AirDischargeCoefficient * Circle.Area(main.AirCorrectorDiameterMetres);
    }

    /// <summary>Effective area of the corrector alone, m².</summary>
    internal double CorrectorArea { get; }

    /// <summary>Area of corrector and uncovered holes in series, and the mean height at which the air enters.</summary>
    /// <param name="level">Level in the tube against the level at rest, m; negative below.</param>
    /// <returns>Effective area, m², and height, m: metering (5).</returns>
    internal (double Area, double Height) At(double level)
    {
        if (CorrectorArea <= 0)
        {
            return (0, 0);
        }

        if (_main.HoleRows.Count == 0)
        {
            return (CorrectorArea, Math.Max(level, -_main.WellDepthMetres));
        }

        var (area, moment) = (0.0, 0.0);
        foreach (var row in _main.HoleRows)
        {
            var top = -row.DepthMetres + row.DiameterMetres / 2;
            var open = row.Count * Circle.SegmentArea(row.DiameterMetres, top - level);
            area += open;
            moment -= open * row.DepthMetres;
        }

        if (area <= 0)
        {
            return (0, 0);
        }

        var holes = _main.AirDischargeCoefficient * area;
        return (1 / Math.Sqrt(1 / (holes * holes) + 1 / (CorrectorArea * CorrectorArea)), moment / area);
    }

    /// <summary>Whether the last row is uncovered.</summary>
    internal bool AllUncovered(double level) =>
        _main.HoleRows.Count > 0 && level <= -_main.HoleRows.Max(r => r.DepthMetres + r.DiameterMetres / 2);
}
