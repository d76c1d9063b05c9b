using Tickover.Cli.Output;
using Tickover.Workshop.Tanks;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover tank</c>: litres against dip, ohms and needle, fuel out of reach, and a fill against the shape.</summary>
/// <param name="terminal">Where it reads and writes.</param>
internal sealed class TankCommand(Terminal terminal)
    : TankDocumentCommand(terminal, "tank", "Works out tanks: litres against dip, ohms and needle, the fuel the pick-up cannot reach, and a measured fill against the shape.")
{
    /// <inheritdoc/>
    protected override string? Lacks(TankSet set) => set.Tanks.Count == 0 ? "no tank is described, so there is no table to make. Describe one, or use 'tickover sender'." : null;

    /// <inheritdoc/>
    protected override string Text(TankAnalysis analysis, bool json, int width) => json ? TankJson.Tank(analysis) : new TankText(width).Text(analysis);
}
