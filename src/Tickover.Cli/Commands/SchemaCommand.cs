using Tickover.Cli.Output;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover schema</c>: the form of a car document, for an editor that checks while somebody writes.</summary>
internal sealed class SchemaCommand : ExampledCommand
{
    private const string Resource = "car.schema.json";

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it writes.</param>
    public SchemaCommand(Terminal terminal)
        : base("schema", "Prints the JSON schema of a car document.", "tickover schema")
    {
        var delivery = new Delivery(terminal);
        delivery.AddTo(this);
        SetAction((parsed, cancellation) => Task.FromResult(delivery.Give(parsed, Text(), cancellation)));
    }

    private static string Text()
    {
        using var stream = typeof(SchemaCommand).Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"the program was built without {Resource}");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
