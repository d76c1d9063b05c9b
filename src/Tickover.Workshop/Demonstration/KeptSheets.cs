using System.Text.Json;
using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Demonstration;

/// <summary>What was measured for a computation, kept on the visits of the invented cars.</summary>
internal static class KeptSheets
{
    private const string Tern = "Larkfield Tern 2800";
    private const string Osprey = "Larkfield Osprey V8";

    public const string TernSupply = "tern.supply.json";
    public const string Gauge = "tern.gauge.json";
    public const string Leak = "gannet.leak.json";
    public const string Wall = "tern.wall.json";

    /// <summary>The files it can use.</summary>
    public static IReadOnlyList<string> Names { get; } = [TernSupply, Gauge, Leak, Wall];

    public static void Play(Script script, DemonstrationDocuments documents)
    {
        if (Read(documents, TernSupply, Tern) is { } supply)
        {
            TernArrival.Visit(script, 9500).On(Stage.Supply, 8, Cast.Kerr).Add(supply);
        }

        OspreyTanks(new VisitScript(script, "osprey-v8", 9500), documents);
        if (Read(documents, Wall, "Marram Six Tourer") is { } wall)
        {
            new VisitScript(script, "marram-six", 9500).On(Stage.Storage, 12, Cast.Kerr).Add(wall);
        }
    }

    // Two tanks and a cross-pipe: the gauge swings in every bend, and the owner asked why.
    private static void OspreyTanks(VisitScript visit, DemonstrationDocuments documents)
    {
        if (Read(documents, Leak, Osprey) is { } leak)
        {
            visit.On(Stage.Storage, 16, Cast.Kerr).Add(leak);
        }

        if (Read(documents, Gauge, Osprey) is { } gauge)
        {
            visit.On(Stage.Gauge, 15, Cast.Kerr).Add(gauge)
                .Add(new Finding
                {
                    Severity = Severity.Watch,
                    State = FindingState.Left,
                    Where = "fuel gauge",
                    What = "Needle reads up to 8 litres wrong at roundabouts",
                    Detail = "One float feels one tank, and fuel crosses between the two in a long bend.",
                    Decision = "Left for now; an averaging box helps most and is priced. On a straight road wait a minute before trusting the needle.",
                    ApprovedBy = "within scope",
                });
        }
    }

    // The samples are of two cars; what another has alike is kept under its own name. The Marram has one tank only.
    private static Worksheet? Read(DemonstrationDocuments documents, string file, string car)
    {
        if (documents.Sheets.GetValueOrDefault(file) is not { } text)
        {
            return null;
        }

        var document = text.Replace(Tern, car, StringComparison.Ordinal).Replace("left tank, underside", "tank, underside", StringComparison.Ordinal).Replace("Samphire Gannet 1500", car, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(document);
        return new Worksheet { Form = json.RootElement.GetProperty("format").GetString()!, Name = json.RootElement.GetProperty("name").GetString()!, Document = document };
    }
}
