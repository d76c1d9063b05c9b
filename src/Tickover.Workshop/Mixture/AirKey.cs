using System.Globalization;
using System.Text;
using Tickover.Physics.Air;
using Tickover.Physics.Breathing;
using Tickover.Physics.Metering;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Mixture;

/// <summary>Names what an air side or a barrel depends on, so that what is alike is solved once and what a trial leaves alone is reused.</summary>
internal static class AirKey
{
    /// <summary>Everything the gas exchange of a group depends on; jets are no part of it.</summary>
    internal static string Of(EngineSpec engine, IntakeGroup group, AmbientAir ambient, SurveyGrid grid)
    {
        var text = new StringBuilder();
        text.Append(engine.Cylinder).Append(engine.IntakeValve).Append(engine.ExhaustValve).Append(engine.Intake)
            .Append(engine.Exhaust).Append(engine.Combustion).Append(ambient);
        foreach (var barrel in group.Barrels)
        {
            text.Append(engine.Barrels[barrel].AirWay);
        }

        var first = engine.FiringDegrees[group.Cylinders[0]];
        foreach (var cylinder in group.Cylinders)
        {
            Add(text, engine.FiringDegrees[cylinder] - first);
        }

        Add(text, group.SharedVolumeCubicMetres);
        foreach (var value in grid.SpeedsRpm.Concat(grid.ThrottleDegrees))
        {
            Add(text, value);
        }

        return text.ToString();
    }

    /// <summary>Everything the metering of a barrel depends on besides its air side and the fuel.</summary>
    internal static string Of(CarBarrel barrel, BarrelSpec spec)
    {
        var text = new StringBuilder();
        text.Append(spec.AirWay);
        foreach (var figure in barrel.Figures)
        {
            Add(text, figure.Si);
        }

        foreach (var row in barrel.EmulsionHoles)
        {
            text.Append(row);
        }

        foreach (var hole in barrel.ProgressionHoles)
        {
            text.Append(hole);
        }

        return text.ToString();
    }

    private static void Add(StringBuilder text, double value) => text.Append(value.ToString("R", CultureInfo.InvariantCulture)).Append(';');
}
