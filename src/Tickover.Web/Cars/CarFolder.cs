using System.Globalization;
using Tickover.Workshop.Cars;

namespace Tickover.Web.Cars;

/// <summary>A folder of car documents: <c>NAME.json</c> in it, or <c>NAME/car.json</c> one down.</summary>
/// <remarks>
/// A save is written beside the document, forced to the disk and then renamed over it, so a power cut leaves the old or
/// the new text and never half of one. Earlier versions lie in a folder of their own that starts with a dot.
/// Safe for several threads; two programs on one folder see each other's documents but not each other's lock.
/// </remarks>
public sealed class CarFolder : ICarShelf
{
    private const string Extension = ".json";
    private const string InnerName = "car.json";
    private readonly Lock _lock = new();
    private readonly string _folder;
    private readonly string _earlier;

    /// <summary>Opens a folder and makes it if it is not there.</summary>
    /// <param name="folder">Path of the folder.</param>
    public CarFolder(string folder)
    {
        _folder = Path.GetFullPath(folder);
        _earlier = Path.Combine(_folder, ".tickover", "earlier");
        Directory.CreateDirectory(_folder);
    }

    /// <inheritdoc/>
    public IReadOnlyList<ShelvedCar> List()
    {
        lock (_lock)
        {
            return [.. Paths().Select(p => Load(p.Key, p.Value)).OrderBy(c => c.Id.Text, StringComparer.Ordinal)];
        }
    }

    /// <inheritdoc/>
    public ShelvedCar? Read(CarId id)
    {
        ArgumentNullException.ThrowIfNull(id);
        lock (_lock)
        {
            return Paths().TryGetValue(id, out var path) ? Load(id, path) : null;
        }
    }

    /// <inheritdoc/>
    public void Save(CarId id, string document)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentNullException.ThrowIfNull(document);
        lock (_lock)
        {
            if (Paths().TryGetValue(id, out var path))
            {
                KeepEarlier(id, path);
            }

            WriteWhole(path ?? Path.Combine(_folder, id.Text + Extension), document);
        }
    }

    /// <inheritdoc/>
    public bool Undo(CarId id)
    {
        ArgumentNullException.ThrowIfNull(id);
        lock (_lock)
        {
            if (EarlierVersions(id).LastOrDefault() is not { } last)
            {
                return false;
            }

            var path = Paths().GetValueOrDefault(id) ?? Path.Combine(_folder, id.Text + Extension);
            File.Move(last, path, overwrite: true);
            return true;
        }
    }

    /// <inheritdoc/>
    public bool Remove(CarId id)
    {
        ArgumentNullException.ThrowIfNull(id);
        lock (_lock)
        {
            if (!Paths().TryGetValue(id, out var path))
            {
                return false;
            }

            KeepEarlier(id, path);
            File.Delete(path);
            return true;
        }
    }

    private static void WriteWhole(string path, string text)
    {
        var beside = Path.Combine(Path.GetDirectoryName(path)!, $".{Guid.NewGuid():N}.tmp");
        try
        {
            using (var stream = new FileStream(beside, FileMode.CreateNew, FileAccess.Write))
            using (var writer = new StreamWriter(stream))
            {
                writer.Write(text);
                writer.Flush();
                stream.Flush(flushToDisk: true);
            }

            File.Move(beside, path, overwrite: true);
        }
        finally
        {
            File.Delete(beside);
        }
    }

    private static CarReading Unreadable(string problem, string whatToDo) =>
        new(null, [new Fault("", problem, "a car document of some twenty lines", whatToDo)], []);

    private Dictionary<CarId, string> Paths()
    {
        var found = Directory.EnumerateFiles(_folder, "*" + Extension)
            .Select(p => (Name: Stem(Path.GetFileName(p)), Path: p))
            .Concat(Directory.EnumerateDirectories(_folder)
                .Select(d => (Name: Path.GetFileName(d), Path: Path.Combine(d, InnerName)))
                .Where(d => File.Exists(d.Path)))
            .Where(f => !f.Name.StartsWith('.'))
            .OrderBy(f => f.Path, StringComparer.Ordinal);
        var paths = new Dictionary<CarId, string>();
        foreach (var (name, path) in found)
        {
            paths.TryAdd(CarId.Read(name) ?? CarId.FromName(name), path);
        }

        return paths;
    }

    private static string Stem(string fileName)
    {
        var stem = fileName[..^Extension.Length];
        return stem.EndsWith(".car", StringComparison.Ordinal) ? stem[..^".car".Length] : stem;
    }

    private ShelvedCar Load(CarId id, string path)
    {
        var earlier = EarlierVersions(id).Count;
        try
        {
            if (new FileInfo(path).Length > ICarShelf.LongestDocument)
            {
                return new(id, "", Unreadable("The file is larger than 1 MB.", "Take out what is not part of the car's description."), earlier);
            }

            var text = File.ReadAllText(path);
            return new(id, text, CarDocument.Read(text), earlier);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return new(id, "", Unreadable("The file cannot be opened.", "See that it is not in use and that the server may read it."), earlier);
        }
    }

    private List<string> EarlierVersions(CarId id)
    {
        var folder = Path.Combine(_earlier, id.Text);
        return Directory.Exists(folder)
            ? [.. Directory.EnumerateFiles(folder, "*" + Extension).Order(StringComparer.Ordinal)]
            : [];
    }

    private void KeepEarlier(CarId id, string path)
    {
        var last = EarlierVersions(id).LastOrDefault();
        var number = last is null ? 1 : int.Parse(Path.GetFileNameWithoutExtension(last), CultureInfo.InvariantCulture) + 1;
        var folder = Directory.CreateDirectory(Path.Combine(_earlier, id.Text));
        File.Copy(path, Path.Combine(folder.FullName, number.ToString("D6", CultureInfo.InvariantCulture) + Extension));
    }
}
