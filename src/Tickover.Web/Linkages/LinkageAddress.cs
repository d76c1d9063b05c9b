using System.Globalization;
using Tickover.Reports.Linkages;

namespace Tickover.Web.Linkages;

/// <summary>Addresses of a linkage's page.</summary>
internal static class LinkageAddress
{
    /// <summary>A linkage with the pedal so far down.</summary>
    public static string Of(LinkagePlace place, LinkageSetting setting) => string.Create(
        CultureInfo.InvariantCulture,
        $"/linkages/{place.Id}?down={place.Down}{(setting is LinkageSetting.AsAdvised ? "&set=1" : "")}{(place.Visit is { } visit ? $"&visit={visit}" : "")}");
}
