using Tickover.Reports;
using Tickover.Reports.Mixture;
using Tickover.Reports.Section;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Web.Mixture;

/// <summary>The pictures of the pages: asks Reports for each with the scale, size and names the page needs.</summary>
public sealed class Drawings
{
    private readonly PictureCache _cache = new();

    /// <summary>A map in one sentence.</summary>
    /// <param name="map">The map.</param>
    /// <param name="barrel">The barrel.</param>
    /// <returns>Such as "Barrels 1 to 8. Too lean, 2,000 to 3,500 rpm, light throttle."</returns>
    public static string Sentence(MixtureMap map, int barrel) => MixturePicture.Sentence(new MixtureView { Map = map, BarrelNumber = barrel });

    /// <summary>The map shown in one sentence.</summary>
    /// <param name="bench">What is on the bench.</param>
    /// <returns>The sentence; of a difference, where it changes most.</returns>
    public static string Sentence(Bench bench) => bench.Query.Show switch
    {
        MapShown.Difference => DifferencePicture.Sentence(Change(bench)),
        MapShown.Trial => Sentence(bench.TrialMap!, bench.Barrel.Number),
        _ => Sentence(bench.FittedMap, bench.Barrel.Number),
    };

    /// <summary>The map shown as a table.</summary>
    /// <param name="bench">What is on the bench.</param>
    /// <returns>The table.</returns>
    public static PictureTable Table(Bench bench) => bench.Query.Show switch
    {
        MapShown.Difference => DifferencePicture.TableFor(Change(bench)),
        MapShown.Trial => MixturePicture.TableFor(new MixtureView { Map = bench.TrialMap!, BarrelNumber = bench.Barrel.Number }),
        _ => MixturePicture.TableFor(new MixtureView { Map = bench.FittedMap, BarrelNumber = bench.Barrel.Number }),
    };

    /// <summary>The map shown, with the place looked at.</summary>
    /// <param name="bench">What is on the bench.</param>
    /// <param name="size">The size.</param>
    /// <returns>One svg element.</returns>
    public string Map(Bench bench, PictureSize size) => bench.Query.Show switch
    {
        MapShown.Difference => Difference(bench, size),
        MapShown.Trial => Trial(bench, size),
        _ => Fitted(bench, size),
    };

    /// <summary>The map of the car as it is.</summary>
    /// <param name="bench">What is on the bench.</param>
    /// <param name="size">The size.</param>
    /// <returns>One svg element.</returns>
    public string Fitted(Bench bench, PictureSize size) => Map(bench, bench.FittedMap, size, "fitted");

    /// <summary>The map of the car on trial.</summary>
    /// <param name="bench">What is on the bench, with a trial.</param>
    /// <param name="size">The size.</param>
    /// <returns>One svg element.</returns>
    public string Trial(Bench bench, PictureSize size) => Map(bench, bench.TrialMap!, size, "trial");

    /// <summary>Trial less fitted.</summary>
    /// <param name="bench">What is on the bench, with a trial.</param>
    /// <param name="size">The size.</param>
    /// <returns>One svg element.</returns>
    public string Difference(Bench bench, PictureSize size)
    {
        var picture = _cache.Find(bench.TrialMap!, $"difference {bench.Barrel.Number} {size}", () => DifferencePicture.ToSvg(Change(bench) with { Size = size, IdPrefix = Named("difference", size) }));
        return RingOnMap.Put(picture, Spot(bench), Named("difference", size));
    }

    /// <summary>λ along one axis through the place looked at.</summary>
    /// <param name="bench">What is on the bench.</param>
    /// <param name="axis">The axis.</param>
    /// <returns>One svg element.</returns>
    public static string Cut(Bench bench, CrossSectionAxis axis) => CrossSectionPicture.ToSvg(new CrossSectionView
    {
        Fitted = bench.FittedMap,
        Trial = bench.TrialMap,
        BarrelNumber = bench.Barrel.Number,
        Spot = Spot(bench),
        Axis = axis,
        Size = PictureSize.Phone,
        IdPrefix = Named($"cut-{axis}", PictureSize.Phone),
    });

    /// <summary>What feeds at a point.</summary>
    /// <param name="point">The point.</param>
    /// <returns>One svg element.</returns>
    public static string Feed(BarrelPoint point) => FeedBar.ToSvg(point);

    /// <summary>A barrel cut open, at rest.</summary>
    /// <param name="car">The car.</param>
    /// <param name="barrel">The barrel.</param>
    /// <param name="size">The size.</param>
    /// <param name="address">Where choosing a part leads, by its key.</param>
    /// <returns>One svg element.</returns>
    public static string Barrel(Car car, CarBarrel barrel, PictureSize size, Func<string, string> address)
    {
        ArgumentNullException.ThrowIfNull(barrel);
        return BarrelSectionPicture.ToSvg(new BarrelSectionView
        {
            Car = car,
            BarrelNumber = barrel.Number,
            Size = size,
            PartAddress = address,
            IdPrefix = Named("section", size),
        });
    }

    /// <summary>The barrel looked at cut open, the throttle where it is looked at, sizes on trial after an arrow.</summary>
    /// <param name="bench">What is on the bench.</param>
    /// <param name="size">The size.</param>
    /// <param name="address">Where choosing a part leads, by its key.</param>
    /// <returns>One svg element.</returns>
    public static string Jets(Bench bench, PictureSize size, Func<string, string> address) => BarrelSectionPicture.ToSvg(Section(bench, size, address));

    /// <summary>The parts of that drawing.</summary>
    /// <param name="bench">What is on the bench.</param>
    /// <returns>The parts with their numbers on the phone's drawing.</returns>
    public static IReadOnlyList<SectionPart> Parts(Bench bench) => BarrelSectionPicture.Parts(Section(bench, PictureSize.Phone, _ => ""));

    /// <summary>Draws the maps of a trial side by side in time, so that the page finds them ready.</summary>
    /// <param name="bench">What is on the bench.</param>
    /// <param name="size">The size the page takes.</param>
    public void Prepare(Bench bench, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(bench);
        if (bench.TrialMap is not null)
        {
            Parallel.Invoke(() => Difference(bench, size), () => Trial(bench, size), () => Fitted(bench, size));
        }
    }

    private string Map(Bench bench, MixtureMap map, PictureSize size, string what)
    {
        var picture = _cache.Find(map, $"{what} {bench.Barrel.Number} {size}", () => MixturePicture.ToSvg(new MixtureView
        {
            Map = map,
            BarrelNumber = bench.Barrel.Number,
            Size = size,
            Scale = Scale(bench),
            IdPrefix = Named(what, size),
        }));
        return RingOnMap.Put(picture, Spot(bench), Named(what, size));
    }

    // Fitted and trial mean the same λ by the same colour. The fitted car sets the scale, so that its map need not be drawn
    // anew for every trial; what a trial has beyond it takes the colour of the end, and its contours say how much it is.
    private static LambdaScale Scale(Bench bench) => LambdaScale.For(bench.FittedMap.ForBarrel(bench.Barrel.Number));

    private static BarrelSectionView Section(Bench bench, PictureSize size, Func<string, string> address) => new()
    {
        Car = bench.Fitted,
        BarrelNumber = bench.Barrel.Number,
        Size = size,
        ThrottleDegrees = bench.Query.Throttle!.Value,
        Point = (bench.TrialPoint ?? bench.FittedPoint).Point,
        SelectedKey = bench.Query.Part is { } part ? $"barrel.{part}" : null,
        Trial = bench.Trial,
        PartAddress = address,
        IdPrefix = Named("section", size),
    };

    private static DifferenceView Change(Bench bench) =>
        new() { Fitted = bench.FittedMap, Trial = bench.TrialMap!, BarrelNumber = bench.Barrel.Number };

    private static MapSpot Spot(Bench bench) => new(bench.Query.Rpm!.Value, bench.Query.Throttle!.Value);

    private static string Named(string what, PictureSize size) => $"{what}-{size}".ToLowerInvariant();
}
