using Tickover.Physics.Fuels;
using Tickover.Workshop.Cars.Catalogue;

namespace Tickover.Workshop.Cars.Reading;

/// <summary>Reads a document into a car, or into everything that is wrong with it.</summary>
internal sealed class CarReader
{
    private const string DefaultFuel = "E5";

    private readonly string _json;
    private readonly ObjectReader _root;
    private readonly Faults _faults;

    private CarReader(string json, SourceNode root, Faults faults)
    {
        _json = json;
        _faults = faults;
        _root = new ObjectReader(root, string.Empty, DocumentForm.Root, faults);
    }

    /// <summary>Reads a text.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The car or the faults.</returns>
    public static CarReading Read(string json)
    {
        var root = SourceParser.Parse(json, out var syntax);
        if (root is null)
        {
            return new CarReading(null, [syntax!], []);
        }

        var faults = new Faults();
        if (root.Kind != SourceKind.Object)
        {
            faults.WrongKind("document", root, "an object in braces", "{ \"format\": \"" + DocumentForm.Format + "\", … }");
            return new CarReading(null, faults.All, []);
        }

        var car = new CarReader(json, root, faults).Car();

        // What is wrong already need not be called unusual too.
        var wrong = faults.All.Select(f => f.Path).ToHashSet(StringComparer.Ordinal);
        return new CarReading(car, InOrder(root, faults.All), InOrder(root, faults.Warnings.Where(w => !wrong.Contains(w.Path))));
    }

    // Somebody mends a document from the top down.
    private static IReadOnlyList<Fault> InOrder(SourceNode root, IEnumerable<Fault> faults) =>
        [.. faults.OrderBy(f => DocumentPath.Parse(f.Path)?.NearestIn(root).Start ?? 0)];

    private Car? Car()
    {
        CheckFormat();
        var name = Name();
        var (fuel, fuelOrigin) = Fuel();
        var isShared = IsShared();
        var engine = Engine();
        var layout = EngineLayoutReader.Read(engine);
        var barrels = CarburettorReader.Read(_root, layout.Cylinders);
        if (layout.Cylinders > 0 && barrels.Count > 0)
        {
            barrels = Feeding.Settle(barrels, layout.Cylinders, isShared, _faults);
        }

        var given = EngineGiven(engine);
        var engineFigures = EngineFigures(given, barrels.Count > 0 ? barrels[0].Place : new BarrelPlace(isShared, 1, 1));
        var barrelFigures = barrels.Select(b => BarrelFigures(given, b)).ToArray();
        return _faults.All.Count > 0 ? null : new Car
        {
            Name = name!,
            Document = _json,
            Layout = layout.Layout,
            CylinderCount = layout.Cylinders,
            Banks = layout.Banks,
            FiringOrder = layout.FiringOrder,
            FiringDegrees = layout.FiringDegrees,
            Engine = Figures(FigureCatalogue.Engine, engineFigures),
            Ambient = Figures(FigureCatalogue.Ambient, engineFigures),
            FuelGrade = fuel,
            FuelOrigin = fuelOrigin,
            Barrels = [.. barrels.Select((b, i) => Barrel(b, i + 1, barrelFigures[i]))],
            SharedManifold = isShared,
        };
    }

    private static CarBarrel Barrel(BarrelSource source, int number, FigureResolver figures)
    {
        var settings = source.Settings;
        var given = new Origin(OriginKind.Given, "Written in the car's document.");
        return new CarBarrel
        {
            Number = number,
            Carburettor = source.Carburettor,
            Path = source.Path,
            Cylinders = source.Feeds!,
            Figures = Figures(FigureCatalogue.Barrel, figures),
            EmulsionTube = settings.EmulsionTube,
            EmulsionHoles = settings.EmulsionHoles ?? HoleDefaults.Emulsion(figures),
            EmulsionHolesOrigin = settings.EmulsionHoles is null ? HoleDefaults.EmulsionOrigin : given,
            ProgressionHoles = settings.ProgressionHoles ?? HoleDefaults.Progression(figures),
            ProgressionHolesOrigin = settings.ProgressionHoles is null ? HoleDefaults.ProgressionOrigin : given,
        };
    }

    private static FigureSet Figures(IEnumerable<CatalogueEntry> entries, FigureResolver figures) => new(entries.Select(figures.ToFigure));

    private static Dictionary<string, GivenFigure> Both(IReadOnlyDictionary<string, GivenFigure> a, IReadOnlyDictionary<string, GivenFigure> b) =>
        a.Concat(b).ToDictionary(StringComparer.Ordinal);

    private void CheckFormat()
    {
        var example = $"\"format\": \"{DocumentForm.Format}\"";
        var node = _root["format"];
        if (node is null)
        {
            _faults.Missing("format", "The marker of a car document", $"\"{DocumentForm.Format}\"", example);
        }
        else if (node is not { Kind: SourceKind.Text, Text: DocumentForm.Format })
        {
            _faults.WrongKind("format", node, $"\"{DocumentForm.Format}\", the one format this version reads", example);
        }
    }

    private string? Name()
    {
        if (_root["name"] is null)
        {
            _faults.Missing("name", "The car's name", $"a text of 1 to {DocumentForm.LongestText} letters", "\"name\": \"…\"");
        }

        return _root.Text("name", "Larkfield Tern 2800");
    }

    private (string Grade, Origin Origin) Fuel()
    {
        if (_root["fuel"] is null)
        {
            return (DefaultFuel, new Origin(OriginKind.CommonPractice, "E5, the grade usually poured into classics; give the grade in the tank."));
        }

        var written = _root.Text("fuel", DefaultFuel);
        if (written is not null && !FuelGrade.TryParse(written, out _))
        {
            _faults.Add("fuel", $"\"{written}\" is not a fuel known here", FuelGrade.Allowed, "Write the grade on the pump, such as \"E5\".");
        }

        return (written ?? DefaultFuel, new Origin(OriginKind.Given, "Written in the car's document."));
    }

    private bool IsShared()
    {
        const string Allowed = "\"separate\" (one barrel for each cylinder) or \"shared\"";
        var manifold = _root.Text("manifold", DocumentForm.SharedManifold);
        if (manifold is not (null or DocumentForm.SeparateManifold or DocumentForm.SharedManifold))
        {
            _faults.Add("manifold", $"\"{manifold}\" is no kind of manifold", Allowed, $"Write \"{DocumentForm.SharedManifold}\" where cylinders share their barrels, else take it out.");
        }

        return manifold is DocumentForm.SharedManifold;
    }

    private ObjectReader? Engine()
    {
        if (_root["engine"] is null)
        {
            _faults.Missing("engine", "The engine", "an object with at least cylinders, bore and stroke", "\"engine\": { \"cylinders\": 4, \"bore\": \"80 mm\", \"stroke\": \"75 mm\", … }");
        }

        return _root.Object("engine", DocumentForm.Engine);
    }

    private IReadOnlyDictionary<string, GivenFigure> EngineGiven(ObjectReader? engine)
    {
        var given = FigureReader.Read(engine, FigureCatalogue.Engine);
        foreach (var entry in FigureCatalogue.Engine.Where(e => engine is not null && e.Default is null && !given.ContainsKey(e.Definition.Key)))
        {
            _faults.Missing(engine!.At(entry.Name), $"\"{entry.Definition.Label}\"", $"{FigureText.Form(entry.Definition.Measure)}, {entry.AllowedText}", $"\"{entry.Name}\": \"80 mm\"");
        }

        return given;
    }

    private FigureResolver EngineFigures(IReadOnlyDictionary<string, GivenFigure> given, BarrelPlace place)
    {
        var ambient = FigureReader.Read(_root.Object("ambient", DocumentForm.Ambient), FigureCatalogue.Ambient);
        var figures = new FigureResolver(Both(given, ambient), place);
        Contradictions.CheckEngine(figures, _faults);
        Unusual.Check(FigureCatalogue.Engine.Concat(FigureCatalogue.Ambient), figures, _faults);
        WarnOfUnused(figures);
        return figures;
    }

    private FigureResolver BarrelFigures(IReadOnlyDictionary<string, GivenFigure> engine, BarrelSource barrel)
    {
        var figures = new FigureResolver(Both(engine, barrel.Settings.Figures), barrel.Place);
        Contradictions.CheckBarrel(barrel, figures, _faults);
        Unusual.Check(FigureCatalogue.Barrel, figures, _faults);
        return figures;
    }

    private void WarnOfUnused(FigureResolver figures)
    {
        if (figures.IsGiven("ambient.pressure") && figures.IsGiven("ambient.altitude"))
        {
            _faults.Warn("ambient.altitude", "Both barometer and altitude are given", "one of them", "The barometer is used; take the altitude out.");
        }

        if (figures.IsGiven("engine.sharedVolume") && !figures.Place.Shared)
        {
            _faults.Warn("engine.sharedVolume", "A shared volume is given and the manifold is separate", "only with \"manifold\": \"shared\"", "It is not used; take it out, or write \"manifold\": \"shared\".");
        }
    }
}
