using Tickover.Web.Worksheets;
using Tickover.Workshop.Supply;

namespace Tickover.Web.Supply;

/// <summary>Fuel lines in hand, worked out.</summary>
public sealed class SuppliesInHand
{
    /// <summary>Makes the shelf.</summary>
    /// <param name="options">Names the folder of the samples.</param>
    public SuppliesInHand(WebAppOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        Lines = new(options.SamplesFolder, WorksheetForms.Supply.SampleEnding, text => SupplyDocument.Read(text) is var read ? (read.Supply is { } supply ? SupplyAnalyst.Of(supply) : null, read.Faults) : default);
        Intake = new()
        {
            Address = "/supply",
            Title = "Fuel lines",
            Where = "From the tank to every float chamber",
            Ask = "A line as measured",
            Lead = WorksheetForms.Supply.Lead,
            Guides = [(WorksheetForms.Supply.Guide, "How a line is written down")],
            Example = "tern.supply.json",
            Note = "For a car in the workshop open its visit, stage Supply, Fuel line: there the document is kept.",
            Cautions = [SupplyCautions.Lines[0]],
            Kinds = [IntakeKind.Of(SupplyDocument.Format, Lines, "/supply", line => (line.Supply.Name, line.Verdict, ""))],
        };
    }

    /// <summary>The lines.</summary>
    public DocumentShelf<SupplyAnalysis> Lines { get; }

    /// <summary>Where they are taken in.</summary>
    public Intake Intake { get; }
}
