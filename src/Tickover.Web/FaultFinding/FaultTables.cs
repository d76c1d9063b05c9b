using Tickover.Workshop.Cars;
using Tickover.Workshop.FaultFinding;

namespace Tickover.Web.FaultFinding;

/// <summary>The table of the trade, with the workshop's own on top where it lies in the data folder; read again when it changes.</summary>
/// <param name="options">Names the folder.</param>
internal sealed class FaultTables(WebAppOptions options)
{
    /// <summary>Name of the workshop's own table in the data folder.</summary>
    public const string FileName = "faults.json";

    private const int LargestBytes = 4 << 20;

    private readonly Lock _lock = new();
    private (DateTime Written, FaultKnowledge Table, IReadOnlyList<Fault> Faults) _read = (DateTime.MinValue, FaultKnowledge.Standard, []);

    /// <summary>The table, and what is wrong with the workshop's own: then it is left aside.</summary>
    /// <returns>Both.</returns>
    public (FaultKnowledge Table, IReadOnlyList<Fault> Faults) Current()
    {
        var file = new FileInfo(Path.Combine(options.DataFolder, FileName));
        var written = file.Exists ? file.LastWriteTimeUtc : DateTime.MinValue;
        lock (_lock)
        {
            if (_read.Written != written)
            {
                var (table, faults) = written == DateTime.MinValue ? (FaultKnowledge.Standard, []) : Read(file);
                _read = (written, table, faults);
            }

            return (_read.Table, _read.Faults);
        }
    }

    private static (FaultKnowledge Table, IReadOnlyList<Fault> Faults) Read(FileInfo file)
    {
        if (file.Length > LargestBytes)
        {
            return (FaultKnowledge.Standard, [new Fault(FileName, "The file is larger than 4 MB", "a table of causes, symptoms and tests", "Check that it is the right file.")]);
        }

        try
        {
            var reading = FaultKnowledgeDocument.Read(File.ReadAllText(file.FullName), FaultKnowledge.Standard);
            return (reading.Knowledge ?? FaultKnowledge.Standard, reading.Faults);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return (FaultKnowledge.Standard, [new Fault(FileName, $"The file cannot be read: {e.Message}", "a file this program may read", "Change its permissions.")]);
        }
    }
}
