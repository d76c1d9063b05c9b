using Tickover.Physics.Linkages;
using Tickover.Physics.Tanks;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Tanks.Reading;

/// <summary>Reads the one shape a tank or a cut-out has.</summary>
internal sealed class TankShapeReader(ObjectReader reader, Func<string, byte[]?>? mesh)
{
    private static readonly Dictionary<string, OutlineView> Views = new(StringComparer.Ordinal)
    {
        ["side"] = OutlineView.Side,
        ["rear"] = OutlineView.Rear,
        ["plan"] = OutlineView.Plan,
    };

    private static readonly Dictionary<string, HeadKind> Heads = new(StringComparer.Ordinal)
    {
        ["ellipse"] = HeadKind.Ellipse,
        ["dish"] = HeadKind.Dish,
        ["cone"] = HeadKind.Cone,
    };

    private static readonly Dictionary<string, CylinderLie> Lies = new(StringComparer.Ordinal)
    {
        ["across"] = CylinderLie.Across,
        ["along"] = CylinderLie.Along,
        ["standing"] = CylinderLie.Standing,
    };

    private static readonly Dictionary<string, double> Units = new(StringComparer.Ordinal)
    {
        ["mm"] = 0.001,
        ["cm"] = 0.01,
        ["m"] = 1,
        ["in"] = 0.0254,
    };

    public TankShape? Read()
    {
        var given = TankForm.Shapes.Where(s => reader[s] is not null).ToArray();
        if (given.Length != 1)
        {
            var found = given.Length == 0 ? "No shape is given" : $"{string.Join(" and ", given)} are given";
            reader.Faults.Add(reader.Path, found, "one of box, outline, round or mesh", "Write \"box\": [500, 300, 250] for length, width and height in mm, or an outline with its depth.");
            return null;
        }

        var wall = TankUnits.Metres(reader["wall"] is null ? 0 : reader.Number("wall", TankLimit.Wall) ?? 0);
        var result = given[0] switch
        {
            "box" => Box(wall),
            "outline" => Outline(wall),
            "round" => Round(wall),
            _ => Mesh(),
        };
        if (result?.Problem is { } problem)
        {
            reader.Faults.Add(reader.At(given[0]), problem, "a shape that is closed and holds something", "Mend it and try again.");
        }

        if (result?.Remark is { } remark)
        {
            reader.Faults.Warn(reader.At(given[0]), remark, "the inside alone, looking outwards", "Check the litres against a fill.");
        }

        return result?.Shape;
    }

    private TankShapeResult? Box(double wall) => reader.Numbers("box", (3, 3), TankLimit.Size) is { } n
        ? TankShapes.Box(new SpaceVector(TankUnits.Metres(n[0]), TankUnits.Metres(n[1]), TankUnits.Metres(n[2])), wall)
        : null;

    private TankShapeResult? Outline(double wall)
    {
        if (reader.Object("outline", TankForm.Outline) is not { } outline)
        {
            return null;
        }

        var view = outline.Word("view", Views, OutlineView.Side);
        var depth = outline.Needed("depth", TankLimit.Size);
        if (outline["corners"] is null)
        {
            outline.Faults.Missing(outline.At("corners"), "The corners", "one after the other round the tank", "\"corners\": [[0, 0], [400, 0], [400, 250], [0, 250]]");
        }

        var corners = (outline.List("corners", "[[0, 0], [400, 0], [400, 250]]") ?? []).Select((c, i) => Corner(c, $"{outline.At("corners")}[{i}]")).ToArray();
        return corners.Length == 0 || Array.Exists(corners, c => c is null) || !double.IsFinite(depth)
            ? null
            : TankShapes.Prism([.. corners.OfType<OutlinePoint>()], TankUnits.Metres(depth), view, wall);
    }

    private OutlinePoint? Corner(SourceNode node, string path)
    {
        if (node.Kind != SourceKind.List || node.Items.Count is < 2 or > 3)
        {
            reader.Faults.WrongKind(path, node, "two numbers, or three with the corner's radius", "[400, 250, 30]");
            return null;
        }

        var numbers = node.Items.Select((item, i) => LinkageNumbers.Number(item, $"{path}[{i}]", i < 2 ? TankLimit.Corner : TankLimit.Radius, reader.Faults)).ToArray();
        return Array.Exists(numbers, n => n is null)
            ? null
            : new OutlinePoint(TankUnits.Metres(numbers[0]!.Value), TankUnits.Metres(numbers[1]!.Value), numbers.Length > 2 ? TankUnits.Metres(numbers[2]!.Value) : 0);
    }

    private TankShapeResult? Round(double wall)
    {
        if (reader.Object("round", TankForm.Round) is not { } round)
        {
            return null;
        }

        var (diameter, length) = (round.Needed("diameter", TankLimit.Size), round.Needed("length", TankLimit.Straight));
        var ends = TankUnits.Metres(round.Number("ends", TankLimit.Ends) ?? 0);
        var (shape, lie) = (round.Word("shape", Heads, HeadKind.Ellipse), round.Word("lies", Lies, CylinderLie.Across));
        return double.IsFinite(diameter) && double.IsFinite(length)
            ? TankShapes.Cylinder(new RoundTank
            {
                DiameterMetres = TankUnits.Metres(diameter) - 2 * wall,
                LengthMetres = TankUnits.Metres(length) - (ends > 0 ? 0 : 2 * wall),
                HeadMetres = Math.Max(0, ends - wall),
                Head = shape,
                Lie = lie,
            })
            : null;
    }

    private TankShapeResult? Mesh()
    {
        if (reader.Object("mesh", TankForm.Mesh) is not { } given)
        {
            return null;
        }

        var unit = given.Word("unit", Units, Units["mm"]);
        if (given["file"] is null)
        {
            given.Faults.Missing(given.At("file"), "The mesh file", "the name of an STL file beside the document", "\"file\": \"left-tank.stl\"");
        }

        if (given.Text("file", "left-tank.stl") is not { } file)
        {
            return null;
        }

        if (mesh?.Invoke(file) is { } bytes)
        {
            return StlMesh.Read(bytes, unit);
        }

        given.Faults.Add(given.At("file"), $"The mesh \"{file}\" is not to be had", "an STL file in the folder of the document, at most 30 MB", "Put it there; where a document comes by itself, as on the page, describe the tank by an outline.");
        return null;
    }
}
