namespace Tickover.Reports;

/// <summary>A picture's figures as a table, for those who do not see the picture and for checking it.</summary>
/// <param name="Caption">What the table holds, with its unit.</param>
/// <param name="Columns">Headings, the first over the row's own heading.</param>
/// <param name="Rows">Rows of as many cells as there are headings; the first cell is the row's heading.</param>
public sealed record PictureTable(string Caption, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows);
