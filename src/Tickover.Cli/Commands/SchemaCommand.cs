using Tickover.Cli.Output;
using Tickover.Workshop.Cars;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover schema</c>: the form of a car document, for an editor that checks while somebody writes.</summary>
internal sealed class SchemaCommand : ExampledCommand
{
    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it writes.</param>
    public SchemaCommand(Terminal terminal)
        : base("schema", "Prints the JSON schema of a car document.", "tickover schema")
    {
        var delivery = new Delivery(terminal);
        delivery.AddTo(this);
        SetAction((parsed, cancellation) => Task.FromResult(delivery.Give(parsed, CarDocument.Schema(), cancellation)));
    }
}
