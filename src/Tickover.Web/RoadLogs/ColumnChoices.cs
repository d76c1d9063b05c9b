using System.Globalization;
using Tickover.Web.Visits;
using Tickover.Workshop.Logs;

namespace Tickover.Web.RoadLogs;

/// <summary>What a form says of the columns of a log, and how a column is offered in it.</summary>
internal static class ColumnChoices
{
    /// <summary>Chosen for a column that is to be found again by its heading and its figures.</summary>
    public const string FindAgain = "find";

    /// <summary>Name of the field for a column.</summary>
    public static string Field(LogColumn column) => string.Create(CultureInfo.InvariantCulture, $"column-{column.Place}");

    /// <summary>What a column was taken for, as the form's choices have it: "lambda@2:AFR 14.7".</summary>
    public static string Of(LogColumn column) => Of(column.Taken, column.Unit);

    /// <summary>A meaning with a unit; without one the unit is found from the figures.</summary>
    public static string Of(string code, string unit) => unit.Length == 0 ? code : $"{code}:{unit}";

    /// <summary>What was told in the form: columns changed in it, and those told before.</summary>
    public static LogHints Hints(FormFields fields, LogSheet sheet)
    {
        var told = new List<string>();
        foreach (var column in sheet.Columns)
        {
            var chosen = fields.Text(Field(column));
            var stands = chosen.Length == 0 || string.Equals(chosen, Of(column), StringComparison.Ordinal);
            if (!string.Equals(chosen, FindAgain, StringComparison.Ordinal) && (column.IsTold || !stands))
            {
                told.Add(string.Create(CultureInfo.InvariantCulture, $"#{column.Place}={(stands ? Of(column) : chosen)}"));
            }
        }

        if (fields.Text("further") is { Length: > 0 } further && fields.Text("further-as") is { Length: > 0 } meaning)
        {
            told.Add($"{further}={meaning}");
        }

        return new LogHints { Columns = told, RowsPerSecond = (double?)fields.Number("rate", "Rows a second") is > 0 and var rate ? rate : null, Part = fields.Whole("part", "Part") is > 0 and var part ? part : null };
    }
}
