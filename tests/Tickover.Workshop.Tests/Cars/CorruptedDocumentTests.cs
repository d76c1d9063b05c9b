using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Tests.Cars;

public class CorruptedDocumentTests
{
    private static readonly string[] Samples = ["tern-2800", "osprey-v8", "gannet-1500", "faulty"];

    private static readonly string[] Values =
    [
        "null", "true", "-1", "0", "1e999", "-1e-999", "123456789012345678901234567890", "\"NaN\"", "\"Infinity mm\"", "\"-∞ mm\"", "\"3,5 mm\"", "\"3,5,5 mm\"", "\"1e308 mm\"", "\"1e-308 mm\"",
        "\"0 mm\"", "\"-5 mm\"", "\"12 parsec\"", "\"12 °C\"", "\"60000 rpm\"", "\"135\"", "\"\"", "\" \"", "[]", "[[]]", "[1, 2, 3]", "[1e400]", "[\"2 x 1 mm at 3 mm\"]", "[\"99 x 99 mm at x\"]",
        "{}", "{\"feeds\": [1]}", "{\"barrels\": [{}]}", "[{\"barrels\": [{}]}]", "\"\\ud800\"", "\"\\u0000\"", "\"shared\"", "\"E85\"", "\"12 mm\"", "\"45 mm\"", "\"120 mm\"",
    ];

    // JsonNode cannot write half a surrogate pair; FaultTests reads one.
    private static readonly string[] Writable = [.. Values.Where(v => !v.Contains("ud800", StringComparison.Ordinal))];

    [Fact]
    public void Changed_bytes_never_throw_and_always_give_a_car_or_a_fault()
    {
        var mutation = Gen.Select(Gen.Int[0, 3], Gen.Double[0, 1], Gen.Byte, Gen.Int[1, 12]);
        Gen.Select(Gen.OneOf(Samples), mutation.Array[1, 5]).Sample(
            (sample, mutations) =>
            {
                var bytes = Encoding.UTF8.GetBytes(Repository.Sample(sample)).ToList();
                foreach (var (kind, where, value, length) in mutations)
                {
                    Mutate(bytes, kind, (int)(where * bytes.Count), value, length);
                }

                return IsDecided(Encoding.UTF8.GetString([.. bytes]));
            },
            iter: 10_000);
    }

    [Fact]
    public void Swapped_values_never_throw_and_always_give_a_car_or_a_fault()
    {
        Gen.Select(Gen.OneOf(Samples[..3]), Gen.Select(Gen.Int[0, 1000], Gen.OneOf(Writable)).Array[1, 6]).Sample(
            (sample, swaps) =>
            {
                var root = JsonNode.Parse(Repository.Sample(sample))!;
                foreach (var (place, value) in swaps)
                {
                    var leaves = Leaves(root).ToArray();
                    if (leaves.Length > 0)
                    {
                        Swap(leaves[place % leaves.Length], value);
                    }
                }

                return IsDecided(root.ToJsonString());
            },
            iter: 10_000);
    }

    [Fact]
    public void Any_member_with_any_value_never_throws()
    {
        var keys = FigureCatalogue.Engine.Concat(FigureCatalogue.Ambient).Concat(FigureCatalogue.Barrel).Select(e => e.Definition.Key)
            .Concat(["fuel", "name", "manifold", "engine.cylinders", "engine.firingOrder", "engine.banks", "barrel.emulsionHoles", "carburettors[0].barrels[0].feeds"]).ToArray();
        var car = CarTexts.Sound(Repository.Sample("gannet-1500"));
        var text = Gen.OneOf<string>(Gen.OneOf(Values), Gen.OneOf(Values).Select(v => v.Trim('"')), Gen.String[0, 30]);
        Gen.Select(Gen.OneOf(keys), text).Sample(
            (key, typed) => IsDecided(CarDocument.Change(car, key, typed)),
            iter: 10_000);
    }

    [Fact]
    public void Whatever_is_given_within_range_leaves_every_default_within_range()
    {
        var entries = FigureCatalogue.Engine.Concat(FigureCatalogue.Barrel).ToArray();
        Gen.Select(Gen.OneOf(entries), Gen.Double[0, 1]).Array[1, 12].Sample(
            given =>
            {
                var car = CarTexts.Sound(CarTexts.Twin);
                foreach (var (entry, part) in given)
                {
                    var definition = entry.Definition;
                    var si = definition.MinimumSi + (part * (definition.MaximumSi - definition.MinimumSi));
                    var reading = CarDocument.Change(car, definition.Key, FigureText.Show(definition.Measure, si));
                    car = reading.Car ?? car;
                }

                return car.Engine.Concat(car.Barrels.SelectMany(b => b.Figures)).All(InRange);
            },
            iter: 1_000);
    }

    private static bool InRange(Figure figure) =>
        double.IsFinite(figure.Si) && figure.Si >= figure.Definition.MinimumSi && figure.Si <= figure.Definition.MaximumSi;

    private static bool IsDecided(string json) => IsDecided(CarDocument.Read(json));

    private static bool IsDecided(CarReading reading) =>
        (reading.Car is null) == (reading.Faults.Count > 0)
        && (reading.Car is null || reading.Car.Engine.Concat(reading.Car.Ambient).Concat(reading.Car.Barrels.SelectMany(b => b.Figures)).All(InRange))
        && (reading.Car is null || IsMapped(reading.Car));

    private static bool IsMapped(Car car)
    {
        var spec = car.ToEngineSpec();
        return spec.Barrels.Count == car.Barrels.Count
            && spec.Groups.SelectMany(g => g.Cylinders).Order().SequenceEqual(Enumerable.Range(0, car.CylinderCount))
            && double.IsFinite(car.ToAmbientAir().DensityKilogramsPerCubicMetre)
            && double.IsFinite(car.ToFuelProperties().DensityKilogramsPerCubicMetre);
    }

    private static void Mutate(List<byte> bytes, int kind, int where, byte value, int length)
    {
        where = Math.Clamp(where, 0, bytes.Count);
        switch (kind)
        {
            case 0 when where < bytes.Count:
                bytes[where] = value;
                break;
            case 1:
                bytes.Insert(where, value);
                break;
            case 2:
                bytes.RemoveRange(where, Math.Min(length, bytes.Count - where));
                break;
            default:
                bytes.RemoveRange(where, bytes.Count - where);
                break;
        }
    }

    private static IEnumerable<JsonNode> Leaves(JsonNode root)
    {
        IEnumerable<JsonNode?> children = root switch
        {
            JsonObject members => members.Select(m => m.Value),
            JsonArray items => items,
            _ => [],
        };
        foreach (var child in children.OfType<JsonNode>())
        {
            yield return child;
            foreach (var below in Leaves(child))
            {
                yield return below;
            }
        }
    }

    private static void Swap(JsonNode node, string value)
    {
        var replacement = JsonNode.Parse(value);
        if (node.Parent is JsonObject members)
        {
            members[node.GetPropertyName()] = replacement;
        }
        else if (node.Parent is JsonArray items)
        {
            items[node.GetElementIndex()] = replacement;
        }
    }
}
