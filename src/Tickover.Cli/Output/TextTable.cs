using Spectre.Console;
using Spectre.Console.Rendering;

namespace Tickover.Cli.Output;

/// <summary>A table of plain text that wraps to a width.</summary>
internal static class TextTable
{
    /// <summary>Lays out a table.</summary>
    /// <param name="width">Columns to fill at most.</param>
    /// <param name="headings">Headings; one that ends in a tab stands over numbers and is set to the right.</param>
    /// <param name="rows">Rows, as many cells as headings.</param>
    /// <returns>The lines, each ended; no blanks at their ends.</returns>
    public static string Text(int width, IReadOnlyList<string> headings, IEnumerable<IReadOnlyList<string>> rows)
    {
        var table = new Table { Border = TableBorder.Simple, ShowRowSeparators = false };
        foreach (var heading in headings)
        {
            var column = new TableColumn(new Spectre.Console.Text(heading.TrimEnd('\t')));
            table.AddColumn(heading.EndsWith('\t') ? column.RightAligned().NoWrap() : column);
        }

        foreach (var row in rows)
        {
            table.AddRow(row.Select(IRenderable (cell) => new Spectre.Console.Text(cell)));
        }

        return Rendered(width, table);
    }

    private static string Rendered(int width, IRenderable table)
    {
        using var lines = new StringWriter { NewLine = "\n" };
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.No,
            ColorSystem = ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(lines),
            Enrichment = new ProfileEnrichment { UseDefaultEnrichers = false },
        });
        console.Profile.Width = width;
        console.Profile.Capabilities.Unicode = true;
        console.Write(table);
        var trimmed = lines.ToString().Split('\n').Select(l => l.TrimEnd()).Where(l => l.Length > 0);
        return string.Join(Environment.NewLine, trimmed) + Environment.NewLine;
    }
}
