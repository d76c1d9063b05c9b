using Tickover.Physics.Walls;

namespace Tickover.Workshop.Walls.Working;

/// <summary>One zone of a survey, in the physics' terms. The one place where mm become metres.</summary>
internal sealed class ZoneWork
{
    private const double Milli = 1e-3;
    private const double Square = 1e-6;

    private readonly WallCell[] _cells;

    public ZoneWork(WallSurvey survey, ZoneKind kind)
    {
        Kind = kind;
        _cells = [.. survey.Cells.Where(c => c.Zone == kind)];
        var read = _cells.Where(c => c.Reading.Kind is not CellReadingKind.NotRead).ToArray();
        var patch = (survey.SpotMillimetres is { } spot ? Math.PI / 4 * spot * spot : survey.CellSquareMillimetres) * Square;
        var seen = survey.SpotMillimetres is null ? read.Sum(c => c.AreaSquareMillimetres) * Square : read.Length * patch;
        Zone = new WallZone
        {
            Sample = new PitSample
            {
                DepthsMetres = Depths(read, CellReadingKind.Depth),
                ShallowerThanMetres = Depths(read, CellReadingKind.Shallower),
                DeeperThanMetres = [.. Depths(read, CellReadingKind.Deeper), .. Depths(read, CellReadingKind.Hole)],
                StepMetres = survey.GaugeStepMillimetres * Milli,
            },
            PatchSquareMetres = patch,
            // A cell cut by the outline is less than a patch; counted by area, so that no corner is missed or counted twice.
            AreaSquareMetres = patch * read.Length + Math.Max(0, Area * Square - seen),
            WallMetres = survey.ThicknessMillimetres * Milli,
            GaugeErrorMetres = survey.GaugeErrorMillimetres * Milli,
        };
        Estimate = Zone.Estimate();
    }

    public ZoneKind Kind { get; }

    public WallZone Zone { get; }

    public PitPosterior? Estimate { get; }

    /// <summary>Area, mm².</summary>
    public double Area => _cells.Sum(c => c.AreaSquareMillimetres);

    /// <summary>Whether nothing of it is left unread, so that an estimate is not wanted.</summary>
    public bool IsAllRead => Zone.PatchesNotRead < 1e-6;

    public ChanceBand? HoleChance(GrowthRange growth, double years) => Zone.IsThrough
        ? new ChanceBand(1, 1, 1)
        : Estimate is { } estimate ? Zone.HoleChance(estimate, growth, years) : null;

    public ZoneFinding Finding(GrowthRange growth) => new()
    {
        Kind = Kind,
        AreaSquareCentimetres = Area / 100,
        Read = Zone.Sample.Count,
        PatchesNotRead = Zone.PatchesNotRead,
        Deepest = _cells.Where(c => c.Reading.Kind is CellReadingKind.Depth or CellReadingKind.Deeper or CellReadingKind.Hole).MaxBy(c => c.Reading.DepthMillimetres),
        Unseen = IsAllRead || Estimate is not { } estimate ? null : Millimetres(estimate.Deepest(Zone.PatchesNotRead)),
        HoleNow = HoleChance(growth, 0),
        Likeliest = Estimate is { } e ? new LikeliestPair(e.Likeliest.LocationMetres / Milli, e.Likeliest.ScaleMetres / Milli) : null,
        Validity = Estimate?.Validity ?? default,
        Wanting = Estimate is null ? PitSample.FewestDepths - Zone.Sample.DepthsMetres.Count : 0,
    };

    private static double[] Depths(WallCell[] read, CellReadingKind kind) => [.. read.Where(c => c.Reading.Kind == kind).Select(c => c.Reading.DepthMillimetres * Milli)];

    private static UnseenDepth Millimetres(DepthBand metres) => new(metres.LowMetres / Milli, metres.MiddleMetres / Milli, metres.HighMetres / Milli);
}
