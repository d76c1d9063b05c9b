using Tickover.Workshop.Cars;

namespace Tickover.Web.Cars;

/// <summary>Cars of an invented workshop to start from; only read.</summary>
/// <param name="options">Says where they are.</param>
public sealed class Samples(WebAppOptions options)
{
    private readonly CarFolder? _folder = Directory.Exists(options.SamplesFolder) ? new CarFolder(options.SamplesFolder) : null;

    /// <summary>The samples that can be read.</summary>
    /// <returns>The samples by name.</returns>
    public IReadOnlyList<ShelvedCar> List() => _folder is null ? [] : [.. _folder.List().Where(s => s.Reading.Car is not null)];

    /// <summary>One sample.</summary>
    /// <param name="id">Its name.</param>
    /// <returns>The sample, or null.</returns>
    public ShelvedCar? Read(CarId id) => _folder?.Read(id);
}
