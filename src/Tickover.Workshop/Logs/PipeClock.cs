namespace Tickover.Workshop.Logs;

/// <summary>When the gas of each cell reaches the sensor: once the flow after it has pushed the mass between valves and sensor on.</summary>
internal static class PipeClock
{
    private const double Longest = 5;                    // s: beyond, the gas has mixed past telling

    /// <summary>Cells later, of each cell, without the fixed part.</summary>
    /// <param name="air">Air through the engine, kg/s.</param>
    /// <param name="step">Length of a cell, s.</param>
    /// <param name="pipeKilograms">Mass between valves and sensor, kg.</param>
    /// <returns>Cells from each one to its arrival.</returns>
    internal static double[] Arrivals(double[] air, double step, double pipeKilograms)
    {
        var (later, most) = (new double[air.Length], Longest / step);
        var (to, pushed) = (0, 0.0);                     // pushed: from cell i up to cell `to`
        for (var i = 0; i < air.Length; i++)
        {
            if (to < i)
            {
                (to, pushed) = (i, 0);
            }

            while (to < air.Length && to - i < most && pushed + Of(air, to) * step < pipeKilograms)
            {
                pushed += Of(air, to) * step;
                to++;
            }

            var rest = to < air.Length && Of(air, to) > 0 ? (pipeKilograms - pushed) / (Of(air, to) * step) : 0;
            later[i] = Math.Min(most, to - i + Math.Min(1, rest));
            pushed -= to > i ? Of(air, i) * step : 0;
        }

        return later;
    }

    private static double Of(double[] air, int i) => double.IsFinite(air[i]) ? air[i] : 0;
}
