using Tickover.Workshop.Cars;

namespace Tickover.Web.Cars;

/// <summary>The sample cars a new car can start from. They are read once; the faulty one is left out.</summary>
/// <param name="options">Names the folder.</param>
public sealed class Samples(WebAppOptions options)
{
    private const string Ending = ".car.json";

    private readonly Lazy<IReadOnlyList<ShelvedCar>> _cars = new(() => Load(options.SamplesFolder));

    /// <summary>All that can be read, by name.</summary>
    /// <returns>The samples.</returns>
    public IReadOnlyList<ShelvedCar> List() => _cars.Value;

    /// <summary>One sample.</summary>
    /// <param name="id">Its name.</param>
    /// <returns>The sample, or null.</returns>
    public ShelvedCar? Read(CarId id) => _cars.Value.FirstOrDefault(c => c.Id == id);

    private static IReadOnlyList<ShelvedCar> Load(string? folder)
    {
        if (!Directory.Exists(folder))
        {
            return [];
        }

        var samples =
            from path in Directory.EnumerateFiles(folder, "*" + Ending).Order(StringComparer.Ordinal)
            let text = File.ReadAllText(path)
            let reading = CarDocument.Read(text)
            where reading.Car is not null
            select new ShelvedCar(CarId.Read(Path.GetFileName(path)[..^Ending.Length])!, text, reading, 0);
        return [.. samples];
    }
}
