using Tickover.Workshop.Exhaust;

namespace Tickover.Cli.Input;

/// <summary>A reading and where it stood.</summary>
/// <param name="Line">Line of the file, from 1; of a row over several lines the last.</param>
/// <param name="Reading">The reading.</param>
internal sealed record GasRow(int Line, GasReading Reading);
