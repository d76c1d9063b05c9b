using Tickover.Workshop.Cars;

namespace Tickover.Bench.Road;

/// <summary>The cars the virtual ones are made from.</summary>
/// <remarks>
/// Developed ones (decision 0111): four progression holes, emulsion tube, level and jets found by <see cref="DevelopCar"/>, as their maker would have.
/// </remarks>
/// <param name="AsSampled">The samples as they are instead.</param>
internal sealed record StudyCars(bool AsSampled)
{
    internal string FileOf(string name) =>
        AsSampled ? Path.Combine(Samples.Root, "samples", name + ".car.json") : Path.Combine(Samples.Root, "bench", "Tickover.Bench", "Road", "Cars", name + ".car.json");

    internal Car Read(string name) => Samples.Parse(File.ReadAllText(FileOf(name)));
}
