using Tickover.Cli.Output;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Leaks;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover leak</c>: what a falling pressure says of a tank, and how small a leak it could have shown.</summary>
/// <param name="terminal">Where it reads and writes.</param>
internal sealed class LeakCommand(Terminal terminal) : DocumentCommand<LeakSheet>(
    terminal,
    "leak",
    "Works out a leak test by falling pressure: the leak with its band, corrected for temperature; the smallest leak it could have seen; what pressure the tank's flat walls bear.",
    "tickover leak samples/gannet.leak.json",
    "tickover leak samples/gannet.leak.json --json")
{
    /// <inheritdoc/>
    protected override (LeakSheet? Subject, IReadOnlyList<Fault> Faults) Read(string text)
    {
        var reading = LeakDocument.Read(text);
        return (reading.Sheet, reading.Faults);
    }

    /// <inheritdoc/>
    protected override (string Text, bool IsNo) Answer(LeakSheet subject, bool json, int width)
    {
        var analysis = LeakAnalyst.Of(subject);
        return (json ? LeakJson.Text(analysis) : new LeakText(width).Text(analysis), analysis.Verdict.IsNo);
    }
}
