using System.Globalization;
using CsvHelper;
using Tickover.Cli.Json;

namespace Tickover.Cli.Output;

/// <summary>Judged gas readings as comma-separated values: RFC 4180, invariant numbers.</summary>
internal static class GasCsv
{
    /// <summary>Writes the table.</summary>
    /// <param name="lines">The readings, at least one.</param>
    /// <returns>The text; lines end in CR LF as the standard has it.</returns>
    public static string Text(IReadOnlyList<GasLine> lines)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = CsvWriter.Create(text))
        {
            Write(csv, lines[0].Cells().Select(cell => cell.Name));
            foreach (var line in lines)
            {
                Write(csv, line.Cells().Select(cell => cell.Value));
            }
        }

        return text.ToString();
    }

    private static void Write(CsvWriter csv, IEnumerable<string> fields)
    {
        foreach (var field in fields)
        {
            csv.WriteField(field);
        }

        csv.EndRecord();
    }
}
