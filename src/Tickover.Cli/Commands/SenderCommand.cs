using Tickover.Cli.Output;
using Tickover.Workshop.Tanks;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover sender</c>: which family, which fault, which cure.</summary>
/// <param name="terminal">Where it reads and writes.</param>
internal sealed class SenderCommand(Terminal terminal)
    : TankDocumentCommand(terminal, "sender", "Judges a fuel sender and its gauge by readings of ohms and needle: family, fault with its probability, and the resistor or bend that cures it.")
{
    /// <inheritdoc/>
    protected override string? Lacks(TankSet set) => set.Readings.Count == 0 ? "no readings are given. Add \"readings\": [{ \"litres\": 10, \"ohms\": 180, \"needle\": 0.2 }]." : null;

    /// <inheritdoc/>
    protected override string Text(TankAnalysis analysis, bool json, int width) => json ? TankJson.Sender(analysis) : new SenderText(width).Text(analysis);
}
