using Tickover.Workshop.Visits;

namespace Tickover.Web.Worksheets;

/// <summary>Addresses of documents in hand; where one came from a visit, its number goes along so that Back leads there again.</summary>
internal static class IntakeAddress
{
    /// <summary>A page, come to from a visit or from none.</summary>
    /// <param name="page">Its address without a query.</param>
    /// <param name="visit">The visit; null for none.</param>
    /// <returns>The address.</returns>
    public static string Of(string page, Id<Visit>? visit) => visit is { } known ? $"{page}?visit={known}" : page;
}
