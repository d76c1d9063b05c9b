using Tickover.Instruments.Logs;
using Tickover.Workshop.Logs;

namespace Tickover.Cli.Output;

/// <summary>One log read, and what it comes to.</summary>
/// <param name="File">Its name as given.</param>
/// <param name="Reading">What came of reading it.</param>
/// <param name="Account">Its points; null where it was refused.</param>
internal sealed record LogResult(string File, LogReading Reading, LogAccount? Account);
