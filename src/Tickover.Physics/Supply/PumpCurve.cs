using System.Globalization;

namespace Tickover.Physics.Supply;

/// <summary>Pressure a pump adds over the flow it passes, by straight lines between measured points.</summary>
/// <remarks>Past the last point the last line goes on, below zero if it must: a pump pushed through is a resistance.</remarks>
public sealed class PumpCurve
{
    private readonly (double Flow, double Pressure)[] _points;

    /// <summary>Makes a curve; <see cref="FaultsOf"/> must find nothing.</summary>
    /// <param name="points">Flow in m³/s and pressure added in Pa, by rising flow from zero.</param>
    /// <exception cref="ArgumentException">The points are no pump curve.</exception>
    public PumpCurve(IReadOnlyList<(double Flow, double Pressure)> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (FaultsOf(points) is [var fault, ..])
        {
            throw new ArgumentException(fault, nameof(points));
        }

        _points = [.. points];
    }

    /// <summary>The points, by rising flow.</summary>
    public IReadOnlyList<(double Flow, double Pressure)> Points => _points;

    /// <summary>Pressure added against a shut line, Pa.</summary>
    public double DeadHeadPascals => _points[0].Pressure;

    /// <summary>Flow at which it adds nothing, m³/s.</summary>
    public double FreeFlow
    {
        get
        {
            var (first, last) = LastLine();
            return last.Flow - last.Pressure / Slope(first, last);
        }
    }

    /// <summary>A curve from the two figures a workshop can take: the pressure of the shut line and the flow of the open one.</summary>
    /// <remarks>The straight line between them lies below every curve that bends downwards, as pumps' do: it is the cautious one.</remarks>
    /// <param name="deadHeadPascals">Pressure added with the line shut, Pa; above zero.</param>
    /// <param name="openFlow">Flow out of the open line, m³/s; above zero.</param>
    /// <param name="openPressurePascals">What the pump still had to add at that flow for the line itself, Pa; below the first.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentException">The figures are no pump.</exception>
    public static PumpCurve FromWorkshop(double deadHeadPascals, double openFlow, double openPressurePascals) =>
        new([(0, deadHeadPascals), (openFlow, openPressurePascals)]); // supply (11)

    /// <summary>What is wrong with points as a pump curve.</summary>
    /// <param name="points">Flow in m³/s and pressure added in Pa.</param>
    /// <returns>One sentence a fault; empty where it is one.</returns>
    public static IReadOnlyList<string> FaultsOf(IReadOnlyList<(double Flow, double Pressure)> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Count < 2 || points.Any(point => !double.IsFinite(point.Flow) || !double.IsFinite(point.Pressure)))
        {
            return ["A pump curve needs two points at least, each a flow and a pressure."];
        }

        var faults = new List<string>();
        if (points[0].Flow != 0 || points[0].Pressure <= 0)
        {
            faults.Add("A pump curve begins with the pressure at no flow, above zero.");
        }

        for (var i = 1; i < points.Count; i++)
        {
            if (points[i].Flow <= points[i - 1].Flow)
            {
                faults.Add(string.Create(CultureInfo.InvariantCulture, $"Point {i + 1} of the pump curve has no more flow than the point before; write them by rising flow."));
            }
            else if (points[i].Pressure > points[i - 1].Pressure)
            {
                faults.Add(string.Create(CultureInfo.InvariantCulture, $"The pump curve rises from point {i} to point {i + 1}; a pump gives less pressure the more it passes. Look at the readings again."));
            }
        }

        if (faults.Count == 0 && points[^1].Pressure >= points[^2].Pressure)
        {
            faults.Add("The last two points of the pump curve have the same pressure; one more point is wanted where it falls.");
        }

        return faults;
    }

    /// <summary>Pressure added at a flow, Pa.</summary>
    /// <param name="volumeFlow">Flow, m³/s; backwards the dead-head pressure.</param>
    /// <returns>Pa; falls or stays with the flow.</returns>
    public double At(double volumeFlow)
    {
        if (volumeFlow <= 0)
        {
            return _points[0].Pressure;
        }

        var upper = 1;
        while (upper < _points.Length - 1 && _points[upper].Flow < volumeFlow)
        {
            upper++;
        }

        var (first, last) = (_points[upper - 1], _points[upper]);
        return first.Pressure + (volumeFlow - first.Flow) * Slope(first, last); // supply (9)
    }

    private static double Slope((double Flow, double Pressure) first, (double Flow, double Pressure) last) =>
        (last.Pressure - first.Pressure) / (last.Flow - first.Flow);

    private ((double Flow, double Pressure) First, (double Flow, double Pressure) Last) LastLine() => (_points[^2], _points[^1]);
}
