using Tickover.Web.Visits;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Worksheets;

/// <summary>Addresses of the worksheets of a visit.</summary>
internal static class WorksheetAddress
{
    /// <summary>Where a worksheet is taken in or replaced.</summary>
    public static string New(Id<Visit> visit, WorksheetForm form) => $"{Addresses.Of(visit)}/worksheets/{form.Key}";
}
