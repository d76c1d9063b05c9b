using Tickover.Physics.Walls;

namespace Tickover.Workshop.Walls.Working;

/// <summary>Says what to do with a wall. A decision aid: the person decides, and a specialist does what is hot.</summary>
internal sealed class WallJudge(WallSurvey survey, IReadOnlyList<ZoneFinding> zones, IReadOnlyList<HoleYear> course, UniformLoss? loss)
{
    private const int MostToRead = 6;
    private const double SoonestYears = 0.5;

    private readonly WallLimits _limits = survey.Limits;
    private readonly double _thickness = survey.ThicknessMillimetres;

    private double ThinDepth => (1 - _limits.LeastLeft) * _thickness;

    private WallCell[] Thin => [.. survey.Read.Where(c => c.Reading.Kind is not CellReadingKind.Shallower && c.Reading.DepthMillimetres >= ThinDepth)];

    public WallVerdict Verdict()
    {
        var thin = Thin;
        var thinPart = (double)thin.Length / Math.Max(1, survey.Read.Count());
        if (loss is { } even && even.LossMetres >= _limits.MeanLoss * _thickness)
        {
            return Replace($"The wall has lost {WallFigures.Percent(even.LossMetres / _thickness)} of its thickness on average ({WallFigures.Percent(_limits.MeanLoss)} is the limit): there is nothing sound to join to.");
        }

        if (thinPart >= _limits.ThinCells && thin.Length > 1)
        {
            return Replace($"{thin.Length} of {survey.Read.Count()} cells read have less than {WallFigures.Percent(_limits.LeastLeft)} of the wall left ({WallFigures.Percent(_limits.ThinCells)} of them is the limit).");
        }

        if (thin.Length > 0)
        {
            return Specialist(thin);
        }

        return course.Count == 0 ? ReadMore(TooFew()) : ByChance();
    }

    private static WallVerdict Replace(string why) => new()
    {
        Kind = WallVerdictKind.Replace,
        Heading = "Out of use: replace it, or have the whole wall renewed by a specialist",
        Why = why + " A patch is refused.",
        PatchRefused = true,
    };

    private WallVerdict Specialist(WallCell[] thin)
    {
        var worst = thin.MaxBy(c => (c.Reading.DepthMillimetres, c.Reading.Kind))!;
        var what = worst.Reading.Kind is CellReadingKind.Hole ? $"There is a hole in {worst.Name}" : $"In {worst.Name} {WallFigures.Millimetres(worst.Reading.DepthMillimetres)} of {WallFigures.Millimetres(_thickness)} are gone";
        var elsewhere = Elsewhere();
        var refused = thin.Length > 1 || elsewhere is null || elsewhere >= _limits.HoleChance;
        var more = thin.Length > 1
            ? $" {thin.Length - 1} more of the cells read {(thin.Length == 2 ? "is" : "are")} as thin as the limit."
            : elsewhere is { } chance ? $" The chance of a hole where nobody read is {WallFigures.Chance(chance)}." : " What lies where nobody read cannot be told yet.";
        return new WallVerdict
        {
            Kind = WallVerdictKind.Specialist,
            Heading = refused ? "Out of use: repair by a specialist; a patch over one place is refused" : "Out of use: repair by a specialist",
            Why = what + "." + more + (refused ? " A patch would end on wall no better than what it covers." : " The rest reads sound enough for a local repair, if the specialist agrees."),
            PatchRefused = refused,
            ReadNext = elsewhere is null ? Next() : [],
        };
    }

    // The chance of a hole where nobody read. All readings speak of it, the thin ones most of all; a hole found is no reason to leave them out.
    private double? Elsewhere()
    {
        var all = new[] { ZoneKind.Pad, ZoneKind.Open }.Select(k => new ZoneWork(survey, k)).Where(z => z.Area > 0).ToArray();
        if (!Array.TrueForAll(all, z => z.IsAllRead || z.Estimate is not null))
        {
            return null;
        }

        return 1 - all.Aggregate(1.0, (sound, z) => sound * (z.Estimate?.Below(z.Zone.WallMetres, z.Zone.PatchesNotRead) ?? 1));
    }

    private WallVerdict ByChance()
    {
        var now = course[0].Chance;
        if (now.Middle >= _limits.HoleChance)
        {
            return new WallVerdict
            {
                Kind = WallVerdictKind.Specialist,
                Heading = "Out of use until more is read or a specialist has looked",
                Why = $"The chance that there is a hole now where nobody read is {WallFigures.Band(now)}; {WallFigures.Percent(_limits.HoleChance)} is the limit. A patch over the worst place read would not meet it.",
                PatchRefused = true,
                ReadNext = Next(),
            };
        }

        if (now.High >= _limits.HoleChance)
        {
            return ReadMore($"The chance of a hole now is {WallFigures.Band(now)}: the limit of {WallFigures.Percent(_limits.HoleChance)} lies within what the readings leave open.");
        }

        var left = course.FirstOrDefault(y => y.Chance.High >= _limits.HoleChance, course[^1]).Years;
        var again = Math.Min(left / 2, _limits.LongestYears);
        return again < SoonestYears
            ? new WallVerdict
            {
                Kind = WallVerdictKind.Specialist,
                Heading = "Out of use: it may be through within the year",
                Why = $"With fast growth the chance of a hole passes {WallFigures.Percent(_limits.HoleChance)} in {WallFigures.Years(left)}.",
                PatchRefused = true,
                ReadNext = Next(),
            }
            : Again(now, left, again);
    }

    private WallVerdict Again(ChanceBand now, double left, double again)
    {
        var day = survey.Surveyed?.AddMonths((int)Math.Floor(again * 12));
        return new WallVerdict
        {
            Kind = WallVerdictKind.SurveyAgain,
            Heading = $"May go on, and is surveyed again {(day is { } on ? $"by {on:yyyy-MM-dd}" : $"in {WallFigures.Years(again)}")}",
            Why = $"The chance of a hole now is {WallFigures.Band(now)}. With fast growth it {(left >= WallAnalyst.Horizon ? $"stays under {WallFigures.Percent(_limits.HoleChance)} for {WallAnalyst.Horizon} years and more" : $"passes {WallFigures.Percent(_limits.HoleChance)} in {WallFigures.Years(left)}")}; surveyed again at half of that, at the latest after {WallFigures.Years(_limits.LongestYears)}. A leak test proves it tight today, not sound.",
            AgainInYears = again,
            AgainOn = day,
        };
    }

    private WallVerdict ReadMore(string why) => new()
    {
        Kind = WallVerdictKind.ReadMore,
        Heading = "The readings cannot decide: read more",
        Why = why,
        ReadNext = Next(),
    };

    private string TooFew() => string.Join(' ', zones.Where(z => z.Wanting > 0).Select(z => $"{ZoneWords.Name(z.Kind)}: {z.Wanting} more measured depth{(z.Wanting == 1 ? "" : "s")} wanted before anything can be said."));

    // The zone that leaves most open first; within it next to the deepest read, where the next deep one most often is.
    private string[] Next()
    {
        var order = zones.OrderByDescending(z => z.Wanting > 0 ? double.MaxValue : z.HoleNow is { } c ? c.High - c.Low : 0).Select(z => z.Kind).ToArray();
        return
        [
            .. order.SelectMany(kind =>
            {
                var from = zones.First(z => z.Kind == kind).Deepest?.Box.Middle ?? survey.Deepest?.Box.Middle ?? survey.Outline.Box.Middle;
                return survey.Cells.Where(c => c.Zone == kind && c.Reading.Kind is CellReadingKind.NotRead).OrderBy(c => Distance(c.Box.Middle, from));
            }).Take(MostToRead).Select(c => c.Name),
        ];
    }

    private static double Distance(WallPoint a, WallPoint b) => Math.Pow(a.Right - b.Right, 2) + Math.Pow(a.Up - b.Up, 2);
}
