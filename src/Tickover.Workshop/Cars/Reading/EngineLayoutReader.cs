using System.Globalization;

namespace Tickover.Workshop.Cars.Reading;

/// <summary>Reads layout, cylinders, firing order and angles, and banks.</summary>
internal static class EngineLayoutReader
{
    private const double DegreesACycle = 720;
    private const double DegreesPerRadian = 180 / Math.PI;

    /// <summary>Up to here there is only one order of firing worth the name.</summary>
    private const int LargestWithoutFiringOrder = 3;

    private static readonly string[] NumberWords =
        ["", "single", "twin", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

    /// <summary>Reads the layout.</summary>
    /// <param name="engine">The engine, or null where it is faulty.</param>
    /// <returns>The layout; what is faulty in it is reported and made up.</returns>
    public static EngineLayout Read(ObjectReader? engine)
    {
        if (engine is null)
        {
            return new EngineLayout("unknown", 0, [], [], []);
        }

        var layout = engine.Text("layout", "inline six");
        var cylinders = Cylinders(engine);
        if (cylinders == 0)
        {
            return new EngineLayout(layout ?? "unknown", 0, [], [], []);
        }

        var order = FiringOrder(engine, cylinders);
        return new EngineLayout(
            layout ?? $"inline {NumberWords[cylinders]}", cylinders, Banks(engine, layout, cylinders), order, FiringDegrees(engine, order));
    }

    private static int Cylinders(ObjectReader engine)
    {
        const string Example = "\"cylinders\": 6";
        var allowed = $"a whole number from 1 to {DocumentForm.MostCylinders}";
        var node = engine["cylinders"];
        if (node is null)
        {
            engine.Faults.Missing(engine.At("cylinders"), "The number of cylinders", allowed, Example);
            return 0;
        }

        if (node.Kind == SourceKind.Number && int.TryParse(node.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            && number is >= 1 and <= DocumentForm.MostCylinders)
        {
            return number;
        }

        engine.Faults.WrongKind(engine.At("cylinders"), node, allowed, Example);
        return 0;
    }

    private static IReadOnlyList<int> FiringOrder(ObjectReader engine, int cylinders)
    {
        const string Example = "\"firingOrder\": [1, 3, 4, 2]";
        var inTurn = Enumerable.Range(1, cylinders).ToArray();
        var path = engine.At("firingOrder");
        if (engine["firingOrder"] is null)
        {
            if (cylinders > LargestWithoutFiringOrder)
            {
                engine.Faults.Missing(path, "The firing order", $"each of the cylinders 1 to {cylinders} once", Example);
            }

            return inTurn;
        }

        var order = engine.CylinderNumbers("firingOrder", cylinders, "[1, 3, 4, 2]");
        if (order is not null && order.Count != cylinders)
        {
            var absent = string.Join(", ", inTurn.Except(order));
            engine.Faults.Add(path, $"The firing order leaves out {absent}", $"each of the cylinders 1 to {cylinders} once", "Add what is left out.");
        }

        return order?.Count == cylinders ? order : inTurn;
    }

    private static double[] FiringDegrees(ObjectReader engine, IReadOnlyList<int> order)
    {
        var count = order.Count;
        var even = Enumerable.Range(0, count).Select(i => i * DegreesACycle / count).ToArray();
        var inOrder = engine["firingAngles"] is null ? even : GivenAngles(engine, count) ?? even;
        var byCylinder = new double[count];
        for (var i = 0; i < count; i++)
        {
            byCylinder[order[i] - 1] = inOrder[i];
        }

        var first = byCylinder[0];
        return [.. byCylinder.Select(d => (d - first + DegreesACycle) % DegreesACycle)];
    }

    private static double[]? GivenAngles(ObjectReader engine, int count)
    {
        var items = engine.List("firingAngles", "[\"0°\", \"180°\", \"360°\", \"540°\"]");
        if (items is null)
        {
            return null;
        }

        var angles = items.Take(count + 1)
            .Select(i => i.Kind == SourceKind.Text && FigureText.TryParse(Measure.Angle, i.Text, out var si) ? si * DegreesPerRadian : double.NaN)
            .ToArray();
        var rising = angles.Length == count && angles[0] == 0 && angles[^1] < DegreesACycle && angles.Zip(angles.Skip(1)).All(p => p.Second > p.First);
        if (!rising)
        {
            engine.Faults.Add(
                engine.At("firingAngles"), "These are not the angles of one cycle", $"{count} angles in firing order, rising from 0° to less than 720°", "Write them as \"0°\", \"90°\" and so on, or take them out for even firing.");
        }

        return rising ? angles : null;
    }

    private static int[] Banks(ObjectReader engine, string? layout, int cylinders)
    {
        var items = engine.List("banks", "[[1, 2, 3, 4], [5, 6, 7, 8]]");
        if (items is null)
        {
            return DefaultBanks(layout, cylinders);
        }

        var banks = new int[cylinders];
        for (var b = 0; b < Math.Min(items.Count, cylinders); b++)
        {
            var path = string.Create(CultureInfo.InvariantCulture, $"{engine.At("banks")}[{b}]");
            if (items[b].Kind != SourceKind.List)
            {
                engine.Faults.WrongKind(path, items[b], "a list of the bank's cylinders", "\"banks\": [[1, 2, 3, 4], [5, 6, 7, 8]]");
                return DefaultBanks(layout, cylinders);
            }

            foreach (var number in engine.CylinderNumbers(path, items[b].Items, cylinders) ?? [])
            {
                banks[number - 1] = b + 1;
            }
        }

        if (banks.Contains(0) || items.Sum(i => i.Items.Count) != cylinders)
        {
            engine.Faults.Add(engine.At("banks"), "The banks do not hold every cylinder once", $"each of the cylinders 1 to {cylinders} in one bank", "List the cylinders of each bank.");
            return DefaultBanks(layout, cylinders);
        }

        return banks;
    }

    private static int[] DefaultBanks(string? layout, int cylinders)
    {
        var isTwoBank = layout is not null && layout.Split(' ', '-').Any(w => w.StartsWith('V') || w.Equals("flat", StringComparison.OrdinalIgnoreCase));
        return [.. Enumerable.Range(0, cylinders).Select(i => isTwoBank && i >= cylinders / 2 ? 2 : 1)];
    }
}
