using System.Globalization;
using Tickover.Web.Worksheets;
using Tickover.Workshop.Tanks;

namespace Tickover.Web.Tanks;

/// <summary>Tanks in hand, worked out: a slider asks for the same ones again and again.</summary>
public sealed class TanksInHand
{
    /// <summary>Makes the shelf.</summary>
    /// <param name="options">Names the folder of the samples.</param>
    public TanksInHand(WebAppOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        Tanks = new(options.SamplesFolder, WorksheetForms.Tank.SampleEnding, text => TankDocument.Read(text) is var reading ? (reading.Set is { } set ? TankAnalyst.Of(set) : null, reading.Faults) : default);
        Intake = new()
        {
            Address = "/tanks",
            Title = "Tanks",
            Where = "What they hold, and what the gauge makes of it",
            Ask = "Tanks as measured",
            Lead = WorksheetForms.Tank.Lead,
            Guides = [(SketchEndpoints.Alone, "Sketch a tank with a finger"), (WorksheetForms.Tank.Guide, "How tanks are written down")],
            Example = "tern.tank.json",
            Note = "A tank given as a mesh (STL) needs that file beside its document, which no page can have: take tickover tank on the command line, or describe the tank by an outline. For a car in the workshop open its visit, stage Storage, Tanks and gauge: there the document is kept.",
            Kinds = [IntakeKind.Of(TankDocument.Format, Tanks, "/tanks", tanks => (tanks.Set.Name, Words(tanks), ""))],
        };
    }

    /// <summary>The tanks.</summary>
    public DocumentShelf<TankAnalysis> Tanks { get; }

    /// <summary>Where they are taken in.</summary>
    public Intake Intake { get; }

    private static string Words(TankAnalysis tanks) => tanks.Table.Count == 0
        ? "Sender and gauge alone"
        : string.Create(CultureInfo.InvariantCulture, $"{(tanks.Set.Tanks.Count == 1 ? "One tank" : $"{tanks.Set.Tanks.Count} tanks")}, {tanks.Table[^1].Litres:0.#} l");
}
