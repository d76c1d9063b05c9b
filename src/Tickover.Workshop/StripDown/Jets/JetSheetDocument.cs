using Tickover.Physics.Fuels;
using Tickover.Physics.Inspection;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.StripDown.Jets;

/// <summary>Reads a sheet of measured jets: JSON, format <c>tickover-jets-1</c>; docs/jets-document.md.</summary>
public static class JetSheetDocument
{
    /// <summary>What the document's format says.</summary>
    public const string Format = "tickover-jets-1";

    private const double UsualCelsius = 20;
    private const double UsualHead = 500;

    /// <summary>Reads a document; never throws for what somebody typed.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The sheet, or what is wrong, where, and what to do.</returns>
    public static (JetSheet? Sheet, IReadOnlyList<Fault> Faults) Read(string json)
    {
        var (written, fault) = SheetText.Read<WrittenJets>(json, Format, w => w.Format, ("sheet of jets", "jets"));
        if (written is null)
        {
            return (null, [fault!]);
        }

        List<Fault> faults = [.. JetSheetFaults.Of(written)];
        return faults.Count > 0 ? (null, faults) : (Make(written), faults);
    }

    private static JetSheet Make(WrittenJets w) => new()
    {
        Name = string.IsNullOrWhiteSpace(w.Name) ? "Jets" : w.Name.Trim(),
        Liquid = w.Liquid?.Trim() ?? "",
        Properties = !JetSheetFaults.IsWater(w.Liquid) && FuelGrade.TryParse(w.Liquid, out var grade) ? grade.At : BenchWater.At,
        Celsius = w.Temperature ?? UsualCelsius,
        HeadAtFirst = w.Head ?? UsualHead,
        HeadAtLast = w.HeadAtEnd ?? w.Head ?? UsualHead,
        LengthRatio = w.Length ?? JetSheetFaults.UsualLength,
        Stamps = w.Numbering is "flow" ? StampKind.Flow : StampKind.Bore,
        StampHead = w.StampHead,
        Jets = [.. w.Jets!.Select(j => Run(j!, w.Volume))],
    };

    private static JetRun Run(WrittenJet jet, double? volume) => new()
    {
        Part = jet.Part!.Trim(),
        Where = jet.Where!.Trim(),
        Stamp = jet.Stamp?.Trim() ?? "",
        PinMillimetres = jet.Pin,
        Millilitres = jet.Time is null ? null : jet.Volume ?? volume,
        Seconds = jet.Time,
    };
}
