namespace Tickover.Reports.Paper.Html;

/// <summary>Writes tables and lists of facts as HTML.</summary>
internal static class HtmlTables
{
    private const int Wide = 4;

    internal static void Write(HtmlPage page, Block block)
    {
        if (block is Facts facts)
        {
            page.Raw("<dl>");
            foreach (var fact in facts.Entries)
            {
                page.Raw("<div><dt>").Words(Prose.Of(fact.Name)).Raw("</dt><dd>").Words(fact.Value).Raw("</dd></div>");
            }

            page.Raw("</dl>\n");
        }
        else if (block is Table { Columns.Count: < Wide } table)
        {
            Write(page, table);
        }
        else if (block is Table wide)
        {
            // A figure is never broken: on a telephone a wide table is pushed sideways, with a finger or with the keys
            page.Raw("<div class=\"scroll\" role=\"group\" tabindex=\"0\" aria-label=\"").Words(Prose.Of(wide.Name)).Raw("\">");
            Write(page, wide);
            page.Raw("</div>\n");
        }
    }

    private static void Write(HtmlPage page, Table table)
    {
        page.Raw((table.Narrow, table.Small) switch
        {
            (true, _) => "<table class=\"narrow\">",
            (_, true) => "<table class=\"dense\">",
            _ => "<table>",
        }).Raw("<caption").Raw(table.ShowsName ? ">" : " class=\"unseen\">").Words(Prose.Of(table.Name)).Raw("</caption><thead><tr>");
        foreach (var column in table.Columns)
        {
            // A head without words is an empty corner, not a heading
            var empty = column.Heading.Length == 0;
            page.Raw(empty ? "<td" : "<th scope=\"col\"").Raw(Figures(column)).Raw(">").Words(Prose.Of(column.Heading)).Raw(empty ? "</td>" : "</th>");
        }

        page.Raw("</tr></thead><tbody>\n");
        foreach (var row in table.Rows)
        {
            page.Raw("<tr>");
            for (var i = 0; i < row.Count; i++)
            {
                page.Raw(i == 0 ? "<th scope=\"row\"" : "<td").Raw(Figures(table.Columns[i])).Raw(">").Words(row[i]).Raw(i == 0 ? "</th>" : "</td>");
            }

            page.Raw("</tr>\n");
        }

        page.Raw("</tbody></table>\n");
    }

    private static string Figures(Column column) => column.Figures ? " class=\"n\"" : "";
}
