using Tickover.Workshop.Logs;
using Tickover.Workshop.Visits;

namespace Tickover.Web.RoadLogs;

/// <summary>Keeps the files dropped last, on the disk and only while the server runs. The record keeps what was made of them, not where somebody drove.</summary>
public sealed class LogsInHand : IDisposable
{
    private const int Most = 8;
    private const long MostBytes = 400L * 1024 * 1024;

    private readonly Lock _lock = new();
    private readonly LinkedList<LogInHand> _logs = [];
    private readonly Lazy<DirectoryInfo> _folder = new(() => Directory.CreateTempSubdirectory("tickover-logs-"));

    /// <summary>A file in hand.</summary>
    /// <param name="visit">The visit it was dropped on.</param>
    /// <param name="id">Number of its run.</param>
    /// <returns>The file; null where it is no longer in hand.</returns>
    public LogInHand? Find(Id<Visit> visit, Id<RoadRun> id)
    {
        lock (_lock)
        {
            return _logs.FirstOrDefault(l => l.Id == id && l.Visit == visit);
        }
    }

    /// <summary>Takes a file into the hand.</summary>
    /// <param name="visit">The visit it is dropped on.</param>
    /// <param name="id">Number of its run.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="on">The day it was taken.</param>
    /// <param name="content">The file.</param>
    /// <returns>The file, not yet read.</returns>
    public async Task<LogInHand> TakeAsync(Id<Visit> visit, Id<RoadRun> id, string name, DateOnly on, Stream content)
    {
        ArgumentNullException.ThrowIfNull(content);
        var path = Path.Combine(_folder.Value.FullName, Guid.NewGuid().ToString("N"));
        await using (var file = File.Create(path))
        {
            await content.CopyToAsync(file);
        }

        var log = new LogInHand(id, visit, name, on, path, new LogTold([], [], [], new LogSheet()));
        Keep(log);
        return log;
    }

    /// <summary>Notes how a file was read last.</summary>
    /// <param name="log">The file.</param>
    public void Keep(LogInHand log)
    {
        lock (_lock)
        {
            foreach (var old in _logs.Where(l => l.Id == log.Id).ToArray())
            {
                Drop(old, delete: !string.Equals(old.File, log.File, StringComparison.Ordinal));
            }

            _logs.AddFirst(log);
            while (_logs.Count > 1 && (_logs.Count > Most || _logs.Sum(l => new FileInfo(l.File) is { Exists: true } f ? f.Length : 0) > MostBytes))
            {
                Drop(_logs.Last!.Value, delete: true);
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_lock)
        {
            _logs.Clear();
            if (_folder.IsValueCreated && _folder.Value.Exists)
            {
                _folder.Value.Delete(recursive: true);
            }
        }
    }

    private void Drop(LogInHand log, bool delete)
    {
        _logs.Remove(log);
        if (delete)
        {
            File.Delete(log.File);
        }
    }
}
