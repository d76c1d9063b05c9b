using Tickover.Physics.Linkages;
using Tickover.Physics.Tanks;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;
using Tickover.Workshop.Tanks.Parts;

namespace Tickover.Workshop.Tanks.Reading;

/// <summary>Reads the tanks.</summary>
internal sealed class TankPartReader(ObjectReader root, Func<string, byte[]?>? mesh)
{
    private const string Example = "{ \"name\": \"left\", \"box\": [500, 300, 250] }";

    public IReadOnlyList<TankPart> Read()
    {
        var readers = root.Items("tanks", TankForm.Tank, Example);
        if (root["tanks"] is not null && readers.Count is 0 or > TankForm.MostTanks)
        {
            root.Faults.Add("tanks", $"{readers.Count} tanks", $"1 to {TankForm.MostTanks}", $"Write \"tanks\": [{Example}].");
        }

        var tanks = new List<TankPart>();
        foreach (var reader in readers.Take(TankForm.MostTanks))
        {
            var tank = Tank(reader, $"tank {tanks.Count + 1}");
            if (tank is null)
            {
                continue;
            }

            if (tanks.Exists(t => string.Equals(t.Name, tank.Name, StringComparison.Ordinal)))
            {
                reader.Faults.Add(reader.At("name"), $"There is a tank \"{tank.Name}\" already", "a name for each", "Call them left and right, or front and rear.");
            }

            tanks.Add(tank);
        }

        return tanks;
    }

    private TankPart? Tank(ObjectReader reader, string otherwise)
    {
        var name = reader["name"] is null ? otherwise : reader.Text("name", "left");
        var at = Vector(reader, "at") ?? default;
        var shape = Whole(reader);
        var dip = Vector(reader, "dip");
        var crossPipe = Vector(reader, "crossPipe");
        var pickUp = PickUp(reader, at);
        if (name is null || shape is null)
        {
            return null;
        }

        Warn(reader, shape);
        return new TankPart
        {
            Name = name,
            Shape = shape.Moved(at),
            Origin = at,
            Foot = at + (dip ?? new SpaceVector(shape.Middle.X, shape.Middle.Y, shape.Lowest.Z)),
            PickUp = pickUp,
            CrossPipe = crossPipe is { } mouth ? at + mouth : null,
        };
    }

    private TankShape? Whole(ObjectReader reader)
    {
        var shapes = new TankShapeReader(reader, mesh);
        var whole = shapes.Read();
        var cutOuts = reader.Items("cutOuts", TankForm.CutOut, "{ \"box\": [100, 300, 60], \"at\": [0, 0, 0] }")
            .Select(c => new TankShapeReader(c, null).Read()?.Moved(Vector(c, "at") ?? default)).ToArray();
        if (whole is null || cutOuts.Length == 0 || Array.Exists(cutOuts, c => c is null))
        {
            return whole;
        }

        var cut = TankShapes.Cut(whole, [.. cutOuts.OfType<TankShape>()]);
        if (cut.Problem is { } problem)
        {
            reader.Faults.Add(reader.At("cutOuts"), problem, "cut-outs within the tank, apart from one another", "Measure their places again, from the same point as the tank's own shape.");
        }

        return cut.Shape;
    }

    private static PickUp? PickUp(ObjectReader tank, SpaceVector at)
    {
        if (tank.Object("pickUp", TankForm.PickUp) is not { } reader)
        {
            return null;
        }

        if (reader["at"] is null)
        {
            reader.Faults.Missing(reader.At("at"), "The place of its mouth", "mm ahead, to the left and up of the tank's own point", "\"at\": [-150, 0, 12]");
        }

        var drawsAir = TankUnits.Metres(reader.Number("drawsAir", TankLimit.DrawsAir) ?? 0);
        return Vector(reader, "at") is { } mouth ? new PickUp(at + mouth, drawsAir) : null;
    }

    private static void Warn(ObjectReader reader, TankShape shape)
    {
        var litres = TankUnits.Litres(shape.VolumeCubicMetres);
        if (litres is < 5 or > 200)
        {
            reader.Faults.Warn(reader.Path, FormattableString.Invariant($"This tank holds {litres:0.0} litres"), "some 20 to 100 litres on a car", "Look whether all lengths are in mm; those of a mesh, whether its unit is right.");
        }
    }

    private static SpaceVector? Vector(ObjectReader reader, string name) => reader.Numbers(name, (3, 3), TankLimit.Place) is { } n
        ? new SpaceVector(TankUnits.Metres(n[0]), TankUnits.Metres(n[1]), TankUnits.Metres(n[2]))
        : null;
}
