using Tickover.Cli.Output;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Supply;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover supply</c>: whether the line from tank to float chambers carries the engine, and what readings of it say.</summary>
/// <param name="terminal">Where it reads and writes.</param>
internal sealed class SupplyCommand(Terminal terminal) : DocumentCommand<FuelSupply>(
    terminal,
    "supply",
    "Works out a fuel line from tank to float chambers: pressure and flow at idle, full load and hot, every margin, and what readings point to. Ends with 1 where it does not carry the engine.",
    "tickover supply samples/tern.supply.json",
    "tickover supply samples/tern.supply.json --json")
{
    /// <inheritdoc/>
    protected override (FuelSupply? Subject, IReadOnlyList<Fault> Faults) Read(string text)
    {
        var read = SupplyDocument.Read(text);
        return (read.Supply, read.Faults);
    }

    /// <inheritdoc/>
    protected override (string Text, bool IsNo) Answer(FuelSupply subject, bool json, int width)
    {
        var analysis = SupplyAnalyst.Of(subject);
        return (json ? SupplyJson.Text(analysis) : new SupplyText(width).Text(analysis), !analysis.Carries);
    }
}
