using Tickover.Web.Visits;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Worksheets;

/// <summary>Addresses of the worksheets of a visit.</summary>
internal static class WorksheetAddress
{
    /// <summary>Where a worksheet is taken in or replaced.</summary>
    public static string New(Id<Visit> visit, WorksheetForm form) => $"{Addresses.Of(visit)}/worksheets/{form.Key}";

    /// <summary>Where a kept worksheet is looked at: drawn where its form can be, else on the page it is worked with.</summary>
    public static string? Look(Id<Visit> visit, Worksheet sheet) => WorksheetForms.All.FirstOrDefault(f => string.Equals(f.Format, sheet.Form, StringComparison.Ordinal)) is not { } form ? null
        : DrawnSheets.Has(sheet.Form) ? $"{New(visit, form)}/{sheet.Id}"
        : form.PageOf(visit);
}
