using Tickover.Physics;
using Tickover.Physics.Walls;
using Tickover.Workshop.Walls.Working;

namespace Tickover.Workshop.Walls;

/// <summary>Works out what a survey of a wall says.</summary>
public static class WallAnalyst
{
    /// <summary>How far ahead the chance of a hole is looked at, years.</summary>
    public const int Horizon = 20;

    private const double MostTimesRead = 100;

    /// <summary>Works it all out.</summary>
    /// <param name="survey">The survey.</param>
    /// <returns>The analysis.</returns>
    public static WallAnalysis Of(WallSurvey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        var growth = Growth(survey);
        ZoneWork[] zones = [.. new[] { ZoneKind.Pad, ZoneKind.Open }.Select(k => new ZoneWork(survey, k)).Where(z => z.Area > 0)];
        var findings = zones.Select(z => z.Finding(growth)).ToArray();
        var course = Course(zones, growth);
        var loss = Loss(survey);
        return new WallAnalysis
        {
            Survey = survey,
            Zones = findings,
            Course = course,
            Loss = loss,
            Couples = [.. survey.Contacts.Select(c => CoupleWriter.Of(survey, c))],
            Verdict = new WallJudge(survey, findings, course, loss).Verdict(),
            Doubts = [.. Doubts(survey, findings)],
        };
    }

    /// <summary>The growth a survey allows.</summary>
    /// <param name="survey">The survey.</param>
    /// <returns>Powers and ages.</returns>
    public static GrowthRange Growth(WallSurvey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        return new GrowthRange
        {
            SlowExponent = survey.Growth.Slow,
            FastExponent = survey.Growth.Fast,
            YoungestYears = survey.AgeYears.Youngest,
            OldestYears = survey.AgeYears.Oldest,
        };
    }

    private static HoleYear[] Course(ZoneWork[] zones, GrowthRange growth)
    {
        var years = Enumerable.Range(0, 2 * Horizon + 1).Select(i => i / 2.0).ToArray();
        var chances = years.Select(y => zones.Select(z => z.HoleChance(growth, y)).ToArray()).ToArray();
        // One zone without an estimate leaves the whole without one, unless a hole was found anyway.
        return [.. years.Zip(chances).Where(p => Array.TrueForAll(p.Second, c => c is not null) || Array.Exists(p.Second, c => c?.Low is 1))
            .Select(p => new HoleYear(p.First, p.Second.OfType<ChanceBand>().Aggregate((a, b) => a.Or(b))))];
    }

    private static UniformLoss? Loss(WallSurvey survey)
    {
        var losses = survey.Read.Where(c => c.Reading.Kind is CellReadingKind.Depth or CellReadingKind.Hole).Select(c => c.Reading.DepthMillimetres).ToArray();
        return survey.ReadsWallLeft && losses.Length > 0 ? UniformLoss.Of(losses, Math.Sqrt(survey.AgeYears.Youngest * survey.AgeYears.Oldest)) : null;
    }

    private static IEnumerable<string> Doubts(WallSurvey survey, ZoneFinding[] zones)
    {
        foreach (var zone in zones.Where(z => z.Validity.Kind is not ValidityKind.Inside && z.Unseen is not null))
        {
            yield return $"{ZoneWords.Name(zone.Kind)}: {zone.Read} cells read. The band is honest but wide; eight measured depths make it much narrower.";
        }

        if (survey.SpotMillimetres is not null)
        {
            yield return "Each reading speaks for one spot only. A gauge set down on spots steps over deep narrow pits: going over each cell for its thinnest place says far more.";
        }

        if (survey.Pads.Count == 0)
        {
            yield return "No pads are marked. Where a pad or strap lay, the wall rots on its own; mark it if there was one.";
        }

        if (zones.Any(z => z.PatchesNotRead > MostTimesRead * z.Read))
        {
            yield return "More than a hundred times the area read was not read: far beyond what such an estimate is made for.";
        }
    }
}
