using System.Globalization;
using Tickover.Physics.Walls;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Walls.Reading;

/// <summary>Reads a document into a survey, or into everything that is wrong with it.</summary>
internal static class WallReader
{
    private static readonly Dictionary<string, bool> Reads = new(StringComparer.Ordinal) { ["pit depth"] = false, ["wall left"] = true };

    private static readonly Dictionary<string, WetSurroundings> Surroundings = new(StringComparer.Ordinal)
    {
        ["wet"] = WetSurroundings.Harsh,
        ["garage"] = WetSurroundings.Normal,
        ["dry"] = WetSurroundings.Controlled,
    };

    public static WallDocumentReading Read(string json)
    {
        var (reader, faults) = DocumentRoot.Open(json, "wall", WallForm.Format, WallForm.Root);
        if (reader is null)
        {
            return new WallDocumentReading(null, faults);
        }

        var survey = Survey(json, reader);
        return new WallDocumentReading(reader.Faults.All.Count > 0 ? null : survey, reader.Faults.All);
    }

    private static WallSurvey? Survey(string json, ObjectReader root)
    {
        var name = LinkReader.Named(root);
        var metal = Metals.Needed(root, "metal", MetalWords.OfWalls);
        var thickness = root.Needed("thickness", WallForm.Thickness);
        var age = Age(root);
        var growth = Growth(root);
        var readsWall = root.Word("reads", Reads, false);
        var pads = ContactReader.Pads(root);
        var outline = OutlineReader.Read(root);
        var (step, error) = Gauge(root);
        var grid = outline is null || double.IsNaN(thickness) ? null : new GridReader(root, outline, pads, new SheetReading(thickness, readsWall)).Read();
        var survey = new WallSurvey
        {
            Name = name ?? string.Empty,
            Document = json,
            Metal = metal,
            ThicknessMillimetres = thickness,
            AgeYears = age,
            Growth = growth,
            Outline = outline ?? new WallOutline([]),
            Cells = grid?.Cells ?? [],
            CellSquareMillimetres = grid?.CellArea ?? 1,
            ReadsWallLeft = readsWall,
            SpotMillimetres = root.Number("spot", WallForm.Spot),
            GaugeStepMillimetres = step,
            GaugeErrorMillimetres = error,
            Pads = pads,
            Contacts = ContactReader.Contacts(root),
            Surroundings = root.Word("surroundings", Surroundings, WetSurroundings.Harsh),
            Limits = Limits(root),
            Surveyed = Day(root),
        };
        return root.Faults.All.Count > 0 ? null : survey;
    }

    private static (double Step, double Error) Gauge(ObjectReader root)
    {
        var reader = root.Object("gauge", WallForm.Gauge);
        var step = reader?.Number("step", WallForm.Step) ?? WallForm.UsualStep;
        return (step, reader?.Number("error", WallForm.Error) ?? step);
    }

    private static (double Youngest, double Oldest) Age(ObjectReader root)
    {
        if (root["age"] is { Kind: SourceKind.List })
        {
            var ages = root.Numbers("age", (2, 2), WallForm.Age);
            if (ages is not null && ages[0] > ages[1])
            {
                root.Faults.Add("age", "The least age is above the most", "the least first", "Write them the other way round.");
            }

            return ages is null ? (1, 1) : (ages[0], ages[1]);
        }

        var age = root.Needed("age", WallForm.Age);
        return (age, age);
    }

    private static (double Slow, double Fast) Growth(ObjectReader root)
    {
        if (root.Object("growth", WallForm.Growth) is not { } reader)
        {
            return (GrowthRange.UsualSlow, GrowthRange.UsualFast);
        }

        var (slow, fast) = (reader.Number("slow", WallForm.Exponent) ?? GrowthRange.UsualSlow, reader.Number("fast", WallForm.Exponent) ?? GrowthRange.UsualFast);
        if (slow > fast)
        {
            root.Faults.Add("growth", "The slow power is above the fast", "slow below fast", "Write them the other way round.");
        }

        return (slow, fast);
    }

    private static WallLimits Limits(ObjectReader root)
    {
        var usual = new WallLimits();
        return root.Object("limits", WallForm.Limits) is not { } reader ? usual : new WallLimits
        {
            HoleChance = reader.Number("holeChance", WallForm.Part) ?? usual.HoleChance,
            LeastLeft = reader.Number("leastLeft", WallForm.Part) ?? usual.LeastLeft,
            MeanLoss = reader.Number("meanLoss", WallForm.Part) ?? usual.MeanLoss,
            ThinCells = reader.Number("thinCells", WallForm.Part) ?? usual.ThinCells,
            LongestYears = reader.Number("longestYears", WallForm.Longest) ?? usual.LongestYears,
        };
    }

    private static DateOnly? Day(ObjectReader root)
    {
        if (root.Text("surveyed", "2026-05-14") is not { } text)
        {
            return null;
        }

        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            return day;
        }

        root.Faults.Add("surveyed", $"\"{text}\" is no day", "year, month and day as in 2026-05-14", "Write \"surveyed\": \"2026-05-14\".");
        return null;
    }
}
