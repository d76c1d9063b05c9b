using System.CommandLine;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Tickover.Cli.Json;
using Tickover.Cli.Output;
using Tickover.Records.Opening;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover record</c>: which record lies in a folder, and how much is in it.</summary>
internal sealed class RecordCommand : RecordedCommand
{
    private readonly Option<bool> _json = new("--json") { Description = "Print JSON (docs/schemas/record.schema.json)." };
    private readonly Delivery _delivery;

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it talks.</param>
    public RecordCommand(Terminal terminal)
        : base(terminal, "record", "Says which record lies in a folder, how much is in it, and which visits are open.", "tickover record --data tickover-data", "tickover record --json --data tickover-data")
    {
        _delivery = new Delivery(terminal);
        Add(_json);
        _delivery.AddTo(this);
    }

    /// <inheritdoc/>
    protected override async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        using var store = await Source.OpenAsync(parsed, Beginning.Expected, cancellation);
        var document = await RecordDocument.OfAsync(store, cancellation);
        var text = parsed.GetValue(_json) ? JsonSerializer.Serialize(document, CommandJson.Readable.RecordDocument) + Environment.NewLine : Text(document);
        return _delivery.Give(parsed, text, cancellation);
    }

    private string Text(RecordDocument document)
    {
        var text = new StringBuilder();
        text.AppendLine(document.Where);
        text.AppendLine(CultureInfo.InvariantCulture, $"  {Count(document.Cars, "car")}, {Count(document.Visits, "visit")}, {Count(document.Readings, "reading")}, {Count(document.Photographs, "photograph")}");
        text.AppendLine(document.LastAct is { } act ? $"  Last act {act.Number}, {act.At.ToLocalTime().ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)}: {act.Words}" : "  Nothing was kept in it yet.");
        if (document.OpenVisits.Count > 0)
        {
            text.AppendLine().Append(TextTable.Text(
                Terminal.Width,
                ["Visit\t", "Car", "Stage", "Arrived"],
                document.OpenVisits.Select(v => (IReadOnlyList<string>)[v.Number.ToString(CultureInfo.InvariantCulture), v.Car, v.Stage, v.ArrivedOn.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)])));
        }

        return text.ToString();
    }

    private static string Count(int count, string what) => string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");
}
