using System.Text.Unicode;
using CsvHelper;
using Tickover.Workshop.Exhaust;

namespace Tickover.Cli.Input;

/// <summary>Reads many gas readings from a table: commas, semicolons or tabs, decimal points or commas, columns in any order.</summary>
internal static class GasTable
{
    /// <summary>The largest table read: some two million readings.</summary>
    public const int LargestBytes = 64 << 20;

    // What a heading is called once units, blanks and marks are gone.
    private static readonly Dictionary<string, string> Columns = new(StringComparer.Ordinal)
    {
        ["co"] = "co",
        ["hc"] = "hc",
        ["co2"] = "co2",
        ["o2"] = "o2",
        ["lambda"] = "lambda",
        ["λ"] = "lambda",
        ["rpm"] = "rpm",
        ["speed"] = "rpm",
        ["oil"] = "oil",
        ["oiltemperature"] = "oil",
    };

    private static readonly string[] Needed = ["co", "hc", "co2", "o2"];

    /// <summary>Reads a table.</summary>
    /// <param name="path">The file, or "-".</param>
    /// <param name="terminal">Gives the standard input.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>Readings and refused rows, or why nothing can be read.</returns>
    public static Answer<GasTableRead> Read(string path, Terminal terminal, CancellationToken cancellation)
    {
        var bytes = InputBytes.Read(path, terminal, LargestBytes, "a table of gas readings", "Name one table, such as samples/gas-readings.csv.");
        if (!bytes.Good)
        {
            return Answer<GasTableRead>.No(bytes.Complaint);
        }

        if (!Utf8.IsValid(bytes.Value))
        {
            return Answer<GasTableRead>.No($"{Named(path)} is not text in UTF-8. Save the table as CSV in UTF-8.");
        }

        using var csv = CsvReader.Create(bytes.Value, new CsvReaderOptions
        {
            HasHeader = false, // read as a record, for its names come with units
            Separator = Mark(bytes.Value),
            TrimWhitespace = true,
            TrackLineNumbers = true,
            AllowLineBreaksInQuotes = false, // a quotation mark left open costs its own line and no other
        });
        return Rows(csv, Named(path), cancellation);
    }

    private static string Named(string path) => path is CarFile.StandardInput ? "The standard input" : $"'{path}'";

    private static Answer<GasTableRead> Rows(CsvReader csv, string name, CancellationToken cancellation)
    {
        if (!csv.Read() || (csv.GetString(0).StartsWith("sep=", StringComparison.OrdinalIgnoreCase) && !csv.Read()))
        {
            return Answer<GasTableRead>.No($"{name} is empty. Its first line names the columns: co, hc, co2, o2, and if known lambda, rpm, oil.");
        }

        var heading = csv.Current.ToArray();
        var places = Places(heading);
        var missing = Needed.Where(column => !places.ContainsKey(column)).ToArray();
        return missing.Length > 0
            ? Answer<GasTableRead>.No($"{name} has no column {string.Join(", ", missing)}. Its first line must name co, hc, co2 and o2; lambda, rpm and oil may stand beside them.")
            : Body(csv, heading, places, cancellation);
    }

    private static GasTableRead Body(CsvReader csv, string[] heading, Dictionary<string, int> places, CancellationToken cancellation)
    {
        var readings = new List<GasRow>();
        var refused = new List<RefusedRow>();
        while (csv.Read())
        {
            cancellation.ThrowIfCancellationRequested();
            var (record, line) = (csv.Current.ToArray(), (int)csv.LineNumber);
            if (record.All(string.IsNullOrWhiteSpace))
            {
                continue;
            }

            var outcome = Entry(record, places).Read();
            if (record.SequenceEqual(heading, StringComparer.OrdinalIgnoreCase) || IsUnits(record, places))
            {
                refused.Add(new RefusedRow(line, "names or units, no reading.", IsReading: false));
            }
            else if (record.Skip(heading.Length).Any(cell => cell.Length > 0))
            {
                refused.Add(new RefusedRow(line, $"{record.Length} cells under {heading.Length} names: decimal commas between commas? Part the cells by semicolons.", IsReading: true));
            }
            else if (outcome.Good)
            {
                readings.Add(new GasRow(line, outcome.Reading));
            }
            else
            {
                refused.Add(new RefusedRow(line, string.Join(' ', outcome.Complaints), IsReading: true));
            }
        }

        var unused = heading.Where((_, i) => !places.ContainsValue(i)).Where(name => name.Length > 0).ToArray();
        return new GasTableRead(readings, refused, unused);
    }

    private static GasEntry Entry(string[] record, Dictionary<string, int> places)
    {
        return new GasEntry
        {
            CarbonMonoxide = Cell("co"),
            Hydrocarbons = Cell("hc"),
            CarbonDioxide = Cell("co2"),
            Oxygen = Cell("o2"),
            Lambda = Cell("lambda"),
            Speed = Cell("rpm"),
            Oil = Cell("oil"),
        };

        string? Cell(string column) => places.TryGetValue(column, out var at) && at < record.Length ? record[at] : null;
    }

    private static bool IsUnits(string[] record, Dictionary<string, int> places) =>
        Needed.All(column => places[column] < record.Length
            && !record[places[column]].Any(char.IsAsciiDigit)
            && (record[places[column]].Contains('%', StringComparison.Ordinal) || record[places[column]].Contains("ppm", StringComparison.OrdinalIgnoreCase)));

    // By the first line alone: no heading holds a semicolon or a tab, while commas may stand in its units and in every number.
    private static char Mark(ReadOnlySpan<byte> text)
    {
        var start = text.TrimStart("\uFEFF \r\n"u8);
        var end = start.IndexOfAny((byte)'\r', (byte)'\n');
        var heading = end < 0 ? start : start[..end];
        return heading.Contains((byte)';') ? ';' : heading.Contains((byte)'\t') ? '\t' : ',';
    }

    private static Dictionary<string, int> Places(string[] heading)
    {
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < heading.Length; i++)
        {
            if (Columns.TryGetValue(Plain(heading[i]), out var column))
            {
                places.TryAdd(column, i);
            }
        }

        return places;
    }

    /// <summary>"CO₂ [% vol]", "co2 (%)" and "CO2 %" are all co2.</summary>
    private static string Plain(string heading)
    {
        var name = heading.Split('[', '(', '%')[0].Replace("ppm", "", StringComparison.OrdinalIgnoreCase).Replace('₂', '2');
        return string.Concat(name.Where(char.IsLetterOrDigit)).ToLowerInvariant();
    }
}
