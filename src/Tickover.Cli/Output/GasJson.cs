using System.Text.Json;
using Tickover.Cli.Input;
using Tickover.Cli.Json;

namespace Tickover.Cli.Output;

/// <summary>Judged gas readings as JSON.</summary>
internal static class GasJson
{
    private const string OneReading = "tickover/gas/1";

    /// <summary>One reading, its fields at the top.</summary>
    /// <param name="line">The reading.</param>
    /// <returns>The text.</returns>
    public static string Text(GasLine line)
    {
        var json = JsonSerializer.SerializeToNode(line, CommandJson.Readable.GasLine)!.AsObject();
        json.Insert(0, "schema", OneReading);
        return json.ToJsonString(CommandJson.Readable.Options) + Environment.NewLine;
    }

    /// <summary>Many readings with what was kept out.</summary>
    /// <param name="read">What the table held.</param>
    /// <param name="lines">The readings.</param>
    /// <returns>The text.</returns>
    public static string Text(GasTableRead read, IReadOnlyList<GasLine> lines) =>
        JsonSerializer.Serialize(
            new GasTableDocument
            {
                Records = lines,
                Refused = [.. read.Refused.Select(row => new GasRefusedLine(row.Line, row.Reason))],
                UnusedColumns = read.UnusedColumns,
            },
            CommandJson.Readable.GasTableDocument) + Environment.NewLine;
}
