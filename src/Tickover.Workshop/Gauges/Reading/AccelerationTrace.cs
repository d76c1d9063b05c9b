using System.Globalization;
using Tickover.Physics.Sending;

namespace Tickover.Workshop.Gauges.Reading;

/// <summary>A CSV of accelerations: a line of names, then a time and two or three accelerations a line.</summary>
internal static class AccelerationTrace
{
    private const int FewestRows = 20;
    private const int MostRows = 4_000_000;
    private const double GapFactor = 5;                    // of the usual step
    private const double Step = 0.01;
    private const double LooksLikeG = 0.25;                // m/s²: nine readings in ten under this are no road, or in g
    private static readonly string[] TimeNames = ["t", "time", "seconds", "time_s", "time (s)", "t (s)"];

    public static TraceReading Read(string text, string? units, string? axes)
    {
        var lines = text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (lines.Length is < FewestRows or > MostRows)
        {
            return No($"{lines.Length} lines; a drive has a line of names and at least {FewestRows} of figures.");
        }

        var separator = Separator(lines[0]);
        var names = lines[0].Split(separator, StringSplitOptions.TrimEntries).Select(n => n.Trim('"')).ToArray();
        var time = Array.FindIndex(names, n => TimeNames.Contains(n, StringComparer.OrdinalIgnoreCase));
        var wanted = (axes ?? "ax,ay,az").Split(',', StringSplitOptions.TrimEntries);
        var columns = wanted.Select(w => Array.FindIndex(names, n => Named(n, w.TrimStart('-')))).ToArray();
        if (time < 0 || columns.Length is not (2 or 3) || columns[0] < 0 || columns[1] < 0)
        {
            return No($"The columns are {string.Join(", ", names)}. Wanted: t in seconds, ax ahead and ay to the left, az upwards if there is one. Say which they are with --axes, such as --axes=-y,x,z.");
        }

        return Rows(lines, separator, time, columns, wanted) is var (rows, complaint) && complaint.Length > 0
            ? No(complaint)
            : Checked(rows, columns.Length == 3 && columns[2] >= 0, units ?? Said(names, columns));
    }

    private static char Separator(string line) => line.Contains(';', StringComparison.Ordinal) ? ';' : line.Contains('\t', StringComparison.Ordinal) ? '\t' : ',';

    private static (List<double[]> Rows, string Complaint) Rows(string[] lines, char separator, int time, int[] columns, string[] wanted)
    {
        var rows = new List<double[]>(lines.Length);
        for (var i = 1; i < lines.Length; i++)
        {
            if (Row(lines[i], separator, time, columns, wanted) is not { } row)
            {
                return (rows, $"Line {i + 1} is not figures: {lines[i][..Math.Min(40, lines[i].Length)]}");
            }

            rows.Add(row);
        }

        return (rows, "");
    }

    private static TraceReading No(string complaint) => new(null, complaint);

    private static bool Named(string name, string wanted) =>
        string.Equals(name, wanted, StringComparison.OrdinalIgnoreCase)
        || name.StartsWith(wanted + " ", StringComparison.OrdinalIgnoreCase)
        || name.StartsWith(wanted + "_", StringComparison.OrdinalIgnoreCase);

    private static string? Said(string[] names, int[] columns) =>
        names[columns[0]].EndsWith("(g)", StringComparison.OrdinalIgnoreCase) || names[columns[0]].EndsWith("_g", StringComparison.OrdinalIgnoreCase) ? "g"
        : names[columns[0]].Contains("m/s", StringComparison.OrdinalIgnoreCase) ? "m/s2"
        : null;

    private static double[]? Row(string line, char separator, int time, int[] columns, string[] wanted)
    {
        var cells = line.Split(separator);
        var row = new double[4];
        for (var c = -1; c < columns.Length; c++)
        {
            var at = c < 0 ? time : columns[c];
            if (at < 0)
            {
                continue;
            }

            var cell = at < cells.Length ? cells[at].Trim() : "";
            if (!double.TryParse(separator is ',' ? cell : cell.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) || !double.IsFinite(value))
            {
                return null;
            }

            row[c + 1] = c >= 0 && wanted[c].StartsWith('-') ? -value : value;
        }

        return row;
    }

    private static TraceReading Checked(List<double[]> rows, bool hasUp, string? units)
    {
        var steps = rows.Zip(rows.Skip(1)).Select(p => p.Second[0] - p.First[0]).ToArray();
        var usual = steps.Order().ElementAt(steps.Length / 2);
        var back = Array.FindIndex(steps, s => s <= 0);
        var gap = Array.FindIndex(steps, s => s > Math.Max(0.5, GapFactor * usual));
        if (back >= 0 || gap >= 0)
        {
            return No(back >= 0
                ? In($"Time does not go on at line {back + 3} ({rows[back + 1][0]} s after {rows[back][0]} s). Is t in seconds and are the lines in order?")
                : In($"There is a gap of {steps[gap]:0.0} s after {rows[gap][0]:0.0} s (usual step {usual:0.###} s). What the car did there is not known: cut the trace there and drive the parts one by one."));
        }

        if (usual > 0.5 || rows[^1][0] - rows[0][0] > 4 * 3600)
        {
            return No(In($"A reading every {usual:0.##} s over {rows[^1][0] - rows[0][0]:0} s. Fuel sloshes once a second: at least two readings a second are needed, over at most four hours. Is t in seconds?"));
        }

        return Question(rows, hasUp, units) is { } question ? No(question) : new TraceReading(Trace(rows, hasUp, units is "g" ? RoadSample.Gravity : 1), "");
    }

    // What looks wrong is asked, with the answer to give.
    private static string? Question(List<double[]> rows, bool hasUp, string? units)
    {
        double Middle(int column) => rows.Select(r => r[column]).Order().ElementAt(rows.Count / 2);
        var gravity = units is "g" ? 1 : RoadSample.Gravity;
        if (hasUp)
        {
            var (ahead, left, up) = (Middle(1), Middle(2), Middle(3));
            if (units is null && Math.Abs(Math.Abs(up) - 1) < 0.15)
            {
                return In($"Upwards it reads {up:0.00} most of the time: these look like g, not m/s². If so, say --units g.");
            }

            if (Math.Abs(up - gravity) > 0.25 * gravity)
            {
                var which = Math.Abs(Math.Abs(ahead) - gravity) < 0.25 * gravity ? "ax" : Math.Abs(Math.Abs(left) - gravity) < 0.25 * gravity ? "ay" : "none of them";
                return In($"Upwards should read about {gravity:0.0} on a level road, and reads {up:0.00}; {which} does. Which columns point ahead, left and up? Say it with --axes, such as --axes=ax,-az,ay. Upside down is -az.");
            }
        }
        else if (units is null && rows.Select(r => Math.Max(Math.Abs(r[1]), Math.Abs(r[2]))).Order().ElementAt(rows.Count * 9 / 10) < LooksLikeG)
        {
            return "Nine readings in ten stay under 0.25: these may be in g. Say --units g or --units m/s2.";
        }

        var largest = rows.Max(r => Math.Max(Math.Abs(r[1]), Math.Abs(r[2]))) / gravity;
        return largest > 2 ? In($"Up to {largest:0.0} g ahead or to the side; no road car does that. Are the units and axes right?") : null;
    }

    // Even steps of 0.01 s, straight between readings.
    private static RoadTrace Trace(List<double[]> rows, bool hasUp, double scale)
    {
        var (at, begin) = (0, rows[0][0]);
        var count = (int)((rows[^1][0] - begin) / Step) + 1;
        return new RoadTrace(Step, Enumerable.Range(0, count).Select(k =>
        {
            var time = begin + k * Step;
            while (at < rows.Count - 2 && rows[at + 1][0] <= time)
            {
                at++;
            }

            var (a, b) = (rows[at], rows[at + 1]);
            var share = Math.Clamp((time - a[0]) / (b[0] - a[0]), 0, 1);
            double Of(int c) => scale * (a[c] + share * (b[c] - a[c]));
            return new RoadSample(Of(1), Of(2), hasUp ? Math.Max(0.3 * RoadSample.Gravity, Of(3)) : RoadSample.Gravity);
        }).ToArray());
    }

    private static string In(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
