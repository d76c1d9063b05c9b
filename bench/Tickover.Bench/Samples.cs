using Tickover.Workshop.Cars;

namespace Tickover.Bench;

/// <summary>The sample cars, read from the clone's samples folder.</summary>
internal static class Samples
{
    internal static readonly string[] Names = ["osprey-v8", "tern-2800", "gannet-1500"];

    /// <summary>Folder of the clone: the nearest one above the program that holds the solution.</summary>
    internal static string Root { get; } = FindRoot();

    internal static Car Read(string name)
    {
        var reading = CarDocument.Read(File.ReadAllText(Path.Combine(Root, "samples", name + ".car.json")));
        return reading.Car ?? throw new InvalidOperationException($"samples/{name}.car.json has faults.");
    }

    internal static Car Parse(string document)
    {
        var reading = CarDocument.Read(document);
        return reading.Car ?? throw new InvalidOperationException("The document has faults: " + string.Join("; ", reading.Faults));
    }

    internal static Car Change(Car car, params (string Path, string Text)[] changes)
    {
        var reading = CarDocument.Change(car, changes.Select(c => KeyValuePair.Create(c.Path, c.Text)));
        return reading.Car ?? throw new InvalidOperationException("The change gives faults: " + string.Join("; ", reading.Faults));
    }

    private static string FindRoot()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "Tickover.slnx")))
            {
                return at.FullName;
            }
        }

        throw new InvalidOperationException("Run this from a build inside the clone: the samples are read from it.");
    }
}
