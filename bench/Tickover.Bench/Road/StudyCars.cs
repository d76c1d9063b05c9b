using Tickover.Workshop.Cars;

namespace Tickover.Bench.Road;

/// <summary>The cars the virtual ones are made from.</summary>
/// <remarks>
/// No set of jets puts more than a third of the samples' operating points in target, by the model itself: nobody developed their tubes, levels and
/// progression holes. For the study somebody did (decision 0111): the same engines with the best found by a search over those.
/// </remarks>
/// <param name="AsSampled">The samples as they are instead.</param>
internal sealed record StudyCars(bool AsSampled)
{
    internal string FileOf(string name) =>
        AsSampled ? Path.Combine(Samples.Root, "samples", name + ".car.json") : Path.Combine(Samples.Root, "bench", "Tickover.Bench", "Road", "Cars", name + ".car.json");

    internal Car Read(string name) => Samples.Parse(File.ReadAllText(FileOf(name)));
}
