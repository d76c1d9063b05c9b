using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsvHelper;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Records.Carrying;

/// <summary>Writes items as a table: RFC 4180, with a header, one line an item.</summary>
internal static class ItemCsv
{
    private const string Si = "si";

    /// <summary>Units of the numbers that have one and the same in every line.</summary>
    private static readonly Dictionary<string, string> Units = new(StringComparer.Ordinal)
    {
        ["engineSpeedRpm"] = "engineSpeed [rpm]",
        ["minutes"] = "time [min]",
        ["estimateHours"] = "estimate [h]",
    };

    /// <summary>The table.</summary>
    /// <param name="kind">Kind of the items.</param>
    /// <param name="items">The items.</param>
    /// <returns>The text; lines end in CR LF as the standard has it.</returns>
    public static string Text(Type kind, IEnumerable<RecordItem> items)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = CsvWriter.Create(text))
        {
            var columns = Columns(kind);
            foreach (var column in columns)
            {
                csv.WriteField(Units.GetValueOrDefault(column, column));
                if (IsSi(kind, column))
                {
                    csv.WriteField("siUnit");
                }
            }

            csv.EndRecord();
            foreach (var item in items)
            {
                Write(csv, kind, columns, JsonNode.Parse(RecordKinds.Write(item))!.AsObject());
            }
        }

        return text.ToString();
    }

    /// <summary>A text as a spreadsheet may have it: one that would be taken for a formula gets an apostrophe before it (OWASP, "CSV Injection").</summary>
    public static string Guarded(string text) => text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r' ? "'" + text : text;

    private static bool IsSi(Type kind, string column) => kind == typeof(Reading) && string.Equals(column, Si, StringComparison.Ordinal);

    // In the order of the JSON, whose contract is the one list of what an item has.
    private static List<string> Columns(Type kind) =>
        [.. RecordKinds.Json.GetTypeInfo(kind).Properties.Where(p => p.Get is not null && p.AttributeProvider?.IsDefined(typeof(System.Text.Json.Serialization.JsonIgnoreAttribute), inherit: true) != true).Select(p => p.Name)];

    private static void Write(CsvWriter csv, Type kind, List<string> columns, JsonObject item)
    {
        foreach (var column in columns)
        {
            csv.WriteField(Cell(item[column]));
            if (IsSi(kind, column))
            {
                csv.WriteField(item[column] is null ? "" : MeasureCatalogue.Find((string?)item["measure"])?.SiUnit ?? "");
            }
        }

        csv.EndRecord();
    }

    private static string Cell(JsonNode? value) => value switch
    {
        null => "",
        JsonValue text when text.GetValueKind() == JsonValueKind.String => Guarded(text.GetValue<string>()),
        JsonArray { Count: 0 } or JsonObject { Count: 0 } => "",
        _ => value.ToJsonString(RecordKinds.Json),
    };
}
