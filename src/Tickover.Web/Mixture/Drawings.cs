using Tickover.Reports;
using Tickover.Reports.Mixture;
using Tickover.Reports.Section;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Web.Mixture;

/// <summary>The pictures of the pages: asks Reports for each with the scale, size and names the page needs.</summary>
internal static class Drawings
{
    public const bool Wide = true;
    public const bool Narrow = false;

    public static string Sentence(Bench bench) => Sentence(bench.FittedMap, bench.Barrel.Number);

    public static string Sentence(MixtureMap map, int barrel) => MixturePicture.Sentence(new MixtureView { Map = map, BarrelNumber = barrel });

    public static PictureTable Table(Bench bench) =>
        MixturePicture.TableFor(new MixtureView { Map = bench.FittedMap, BarrelNumber = bench.Barrel.Number });

    public static string Map(Bench bench, bool wide) => bench.Query.Show == MapShown.Difference
        ? Difference(bench, wide ? "map-wide" : "map-narrow")
        : Map(bench, bench.Query.Show, Size(wide), wide ? "map-wide" : "map-narrow");

    public static string Small(Bench bench, MapShown shown) => Map(bench, shown, PictureSize.Phone, $"small-{shown.ToString().ToLowerInvariant()}");

    public static string Difference(Bench bench, string name) => "";

    public static string OverSpeed(Bench bench) => "";

    public static string OverOpening(Bench bench) => "";

    public static string Feed(BarrelPoint point) => "";

    public static string Barrel(Car car, CarBarrel barrel, bool wide, Func<string, string> address) => BarrelSectionPicture.ToSvg(new BarrelSectionView
    {
        Car = car,
        BarrelNumber = barrel.Number,
        Size = Size(wide),
        PartAddress = address,
        IdPrefix = wide ? "section-wide" : "section-narrow",
    });

    public static string Jets(Bench bench, bool wide, Func<string, string> address) => BarrelSectionPicture.ToSvg(Section(bench, wide, address));

    public static IReadOnlyList<SectionPart> Parts(Bench bench) => BarrelSectionPicture.Parts(Section(bench, Wide, _ => ""));

    private static BarrelSectionView Section(Bench bench, bool wide, Func<string, string> address) => new()
    {
        Car = bench.Fitted,
        BarrelNumber = bench.Barrel.Number,
        Size = Size(wide),
        ThrottleDegrees = bench.Query.Throttle!.Value,
        Point = bench.FittedPoint.Point,
        SelectedKey = bench.Query.Part is { } part ? $"barrel.{part}" : null,
        TrialSizes = bench.Query.Changes.GroupBy(c => $"barrel.{c.Part}", StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => bench.TrialSize(g.Key) ?? g.Last().Value, StringComparer.Ordinal),
        PartAddress = address,
        IdPrefix = wide ? "section-wide" : "section-narrow",
    };

    private static PictureSize Size(bool wide) => wide ? PictureSize.Full : PictureSize.Phone;

    // Fitted and trial side by side mean the same λ by the same colour.
    private static LambdaScale Scale(Bench bench)
    {
        var fitted = bench.FittedMap.ForBarrel(bench.Barrel.Number);
        return bench.TrialMap is null ? LambdaScale.For(fitted) : LambdaScale.For(fitted, bench.TrialMap.ForBarrel(bench.Barrel.Number));
    }

    private static string Map(Bench bench, MapShown shown, PictureSize size, string name) => MixturePicture.ToSvg(new MixtureView
    {
        Map = shown == MapShown.Trial ? bench.TrialMap! : bench.FittedMap,
        BarrelNumber = bench.Barrel.Number,
        Size = size,
        Scale = Scale(bench),
        Tapped = new MapSpot(bench.Query.Rpm!.Value, bench.Query.Throttle!.Value),
        IdPrefix = name,
    });
}
