using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Logs;

/// <summary>Reads a logger's file down to the steady points a calibration takes. Implemented where files are read.</summary>
public interface ILogBook
{
    /// <summary>Reads a log.</summary>
    /// <param name="log">The file.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="car">The car as it was when the log was taken.</param>
    /// <param name="hints">What a person says of it, and what is remembered of earlier ones.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>The points with how they came about, or why there are none.</returns>
    LogTold Read(Stream log, string name, Car car, LogHints hints, CancellationToken cancellation);

    /// <summary>What a column can be taken for, with the units each comes in: for choosing.</summary>
    /// <returns>Groups in the order they are offered.</returns>
    IReadOnlyList<LogMeaning> Meanings();
}
