namespace Tickover.Practice.Virtual;

/// <summary>How far a cylinder fills, and the mean depression behind its plate, for any gap: docs/physics/practice.md (3) to (5).</summary>
/// <remarks>Both follow from one number: air the gap would pass in a cycle if the flow were sonic throughout, over air that fills the swept volume at atmospheric pressure.</remarks>
internal sealed class Filling
{
    private const int Points = 240;
    private const double Least = 0.004;
    private const double Most = 40;
    private const double CriticalRatio = 0.528;
    private const double ExhaustPressure = 1.03;
    private const double Clearance = 0.125;
    private const double AtmosphereKilopascals = 100;
    private const int StepsInStroke = 16;
    private const int StepsBetween = 32;
    private static readonly double Spacing = Math.Log(Most / Least) / (Points - 1);

    private readonly double[] _filled = new double[Points];
    private readonly double[] _depression = new double[Points];

    private Filling(Func<double, (double Filled, double Pressure)> at)
    {
        for (var i = 0; i < Points; i++)
        {
            var (filled, pressure) = at(Least * Math.Exp(i * Spacing));
            _filled[i] = filled;
            _depression[i] = (1 - pressure) * AtmosphereKilopascals;
        }
    }

    /// <summary>One barrel a cylinder: the runner with its port, nine tenths of a swept volume, is emptied in the stroke and fills again until the next; the flow is sonic part of the cycle.</summary>
    public static Filling OwnRunner { get; } = new(gap => Pulsed(gap, 0.9));

    /// <summary>Several cylinders on one manifold: strokes overlap, the depression is steady.</summary>
    public static Filling SharedManifold { get; } = new(Steady);

    /// <summary>Air drawn in a cycle over what would fill the swept volume.</summary>
    public double Filled(double gap) => gap < Least ? gap : Math.Min(gap, Read(_filled, gap));

    /// <summary>Mean depression behind the plate, kPa.</summary>
    public double Depression(double gap) => Read(_depression, gap);

    /// <summary>The gap that fills so far.</summary>
    public double GapFor(double filled)
    {
        var (low, high) = (Least, Most);
        for (var i = 0; i < 60; i++)
        {
            var middle = Math.Sqrt(low * high);
            (low, high) = Filled(middle) < filled ? (middle, high) : (low, middle);
        }

        return Math.Sqrt(low * high);
    }

    private static double Read(double[] table, double gap)
    {
        var place = Math.Clamp(Math.Log(gap / Least) / Spacing, 0, Points - 1.000001);
        var index = (int)place;
        return table[index] + ((table[index + 1] - table[index]) * (place - index));
    }

    // practice (2): flow over sonic flow; the ellipse that replaces the root of powers is within 1 % of it
    private static double OverSonic(double pressure)
    {
        if (pressure <= CriticalRatio)
        {
            return 1;
        }

        var part = (Math.Min(pressure, 1) - CriticalRatio) / (1 - CriticalRatio);
        return Math.Sqrt(1 - (part * part));
    }

    // practice (3) and (4): the gas in runner and cylinder at one pressure during the stroke, the runner alone after it; repeated until cycles are alike
    private static (double Filled, double Pressure) Pulsed(double gap, double runner)
    {
        var (start, filled, mean) = (0.8, 0.0, 0.0);
        for (var cycle = 0; cycle < 400; cycle++)
        {
            var (end, drawn, average) = Cycle(gap, runner, start);
            (filled, mean) = (drawn, average);
            if (Math.Abs(end - start) < 1e-9)
            {
                break;
            }

            start = end;
        }

        return (filled, mean);
    }

    private static (double End, double Drawn, double Mean) Cycle(double gap, double runner, double start)
    {
        var mass = (start * runner) + (ExhaustPressure * Clearance);
        var (drawn, sum) = (0.0, 0.0);
        var step = gap * 0.25 / StepsInStroke;
        var pressure = start;
        for (var i = 0; i < StepsInStroke; i++)
        {
            var swept = 0.5 * (1 - Math.Cos(Math.PI * (i + 1) / StepsInStroke));
            var volume = runner + Clearance + swept;
            pressure = mass / volume;
            var flow = Math.Min(step * OverSonic(pressure), Math.Max(0, volume - mass)); // it never fills beyond the atmosphere
            mass += flow;
            drawn += flow;
            sum += pressure * 0.25 / StepsInStroke;
        }

        pressure = Math.Min(mass / (runner + Clearance + 1), 1);
        step = gap * 0.75 / StepsBetween;
        for (var i = 0; i < StepsBetween; i++)
        {
            var flow = Math.Min(step * OverSonic(pressure), (1 - pressure) * runner);
            pressure += flow / runner;
            drawn += flow;
            sum += pressure * 0.75 / StepsBetween;
        }

        return (pressure, drawn, sum);
    }

    // practice (5)
    private static (double Filled, double Pressure) Steady(double gap)
    {
        var (low, high) = (0.0, 1.0);
        for (var i = 0; i < 60; i++)
        {
            var middle = 0.5 * (low + high);
            (low, high) = (middle * (1 + Clearance)) - (ExhaustPressure * Clearance) < gap * OverSonic(middle) ? (middle, high) : (low, middle);
        }

        return (gap * OverSonic(low), low);
    }
}
