using Tickover.Physics.Supply;
using Tickover.Workshop.Leaks;
using Tickover.Workshop.StripDown.Jets;
using Tickover.Workshop.Supply;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Walls;

namespace Tickover.Workshop.FaultFinding.Recorded;

/// <summary>What kept worksheets say of causes: fuel line, leak test, wall, jets.</summary>
internal static class SheetEvidence
{
    private const double Likely = 0.5;      // a cause of the supply's own diagnosis below this is not passed on

    public static IEnumerable<FaultEvidence> Of(VisitRecord record) =>
        record.Worksheets.Where(s => s.Visit == record.Visit.Id && record.SheetOf(s.Form, s.Name) == s).SelectMany(sheet => (sheet.Form switch
        {
            SupplyDocument.Format => Supply(sheet.Document),
            LeakDocument.Format => Leak(sheet.Document),
            WallDocument.Format => Wall(sheet.Document),
            JetSheetDocument.Format => Jets(sheet.Document),
            _ => [],
        }).Select(said => new FaultEvidence { Cause = said.Cause, Against = said.Against, Words = $"{sheet.Name}: {said.Words}" }));

    private static IEnumerable<(string Cause, bool Against, string Words)> Supply(string document)
    {
        if (SupplyDocument.Read(document).Supply is not { } supply)
        {
            yield break;
        }

        var analysis = SupplyAnalyst.Of(supply);
        if (analysis.Diagnosis is not { } diagnosis)
        {
            yield break;     // a line that was computed and not measured says what it could carry, not what it does
        }

        foreach (var cause in diagnosis.Causes.Where(c => c.Probability >= Likely))
        {
            if (Cause(cause.Kind) is { } key)
            {
                yield return (key, false, SupplyCauseWords.Said(diagnosis));
            }
        }

        if (diagnosis.Causes[0] is { Kind: SupplyFaultKind.None, Probability: >= Likely })
        {
            yield return ("pump-weak", true, analysis.Verdict);
            yield return ("filter-clogged", true, analysis.Verdict);
        }
    }

    private static string? Cause(SupplyFaultKind kind) => kind switch
    {
        SupplyFaultKind.FilterLoaded => "filter-clogged",
        SupplyFaultKind.SuctionRestricted => "pickup-dirty",
        SupplyFaultKind.AirLeak => "suction-air",
        SupplyFaultKind.PumpWorn => "pump-weak",
        SupplyFaultKind.PumpValvesLeak => "pump-valves",
        SupplyFaultKind.FloatValveLeaks => "float-valve-leak",
        SupplyFaultKind.VentStopped => "vent-blocked",
        SupplyFaultKind.LowVoltage => "pump-low-volts",
        _ => null,
    };

    private static IEnumerable<(string Cause, bool Against, string Words)> Leak(string document) =>
        LeakDocument.Read(document).Sheet is { } sheet && LeakAnalyst.Of(sheet).Verdict is { Kind: LeakVerdictKind.Leaks or LeakVerdictKind.NoneSeen } verdict
            ? [("tank-upper-seam", verdict.Kind == LeakVerdictKind.NoneSeen, verdict.Heading)]
            : [];

    private static IEnumerable<(string Cause, bool Against, string Words)> Wall(string document) =>
        WallDocument.Read(document).Survey is { } survey && WallAnalyst.Of(survey).Verdict is { Kind: not WallVerdictKind.ReadMore } verdict
            ? [("tank-pitting", !verdict.IsNo, verdict.Heading)]
            : [];

    private static IEnumerable<(string Cause, bool Against, string Words)> Jets(string document)
    {
        if (JetSheetDocument.Read(document).Sheet is not { } sheet)
        {
            yield break;
        }

        foreach (var jet in JetJudge.Judge(sheet).Jets)
        {
            foreach (var (cause, against) in Jet(jet.Jet.Part.ToUpperInvariant(), jet.Finding))
            {
                yield return (cause, against, $"{jet.Jet.Part}, {jet.Jet.Where}: {jet.Words}");
            }
        }
    }

    // One blocked jet is told before others that agree: the first entry of a cause is the one that counts.
    private static IEnumerable<(string Cause, bool Against)> Jet(string part, JetFinding finding) => (part, finding) switch
    {
        ("IDLE JET", JetFinding.Blocked or JetFinding.Narrow) => [("idle-jet-blocked", false)],
        ("IDLE JET", JetFinding.Wide) => [("idle-jets-large", false)],
        ("MAIN JET", JetFinding.Blocked or JetFinding.Narrow) => [("main-small", false)],
        ("MAIN JET", JetFinding.Wide) => [("main-large", false)],
        ("AIR CORRECTOR", JetFinding.Wide) => [("corrector-big", false)],
        ("AIR CORRECTOR", JetFinding.Blocked or JetFinding.Narrow) => [("corrector-small", false)],
        _ => [],
    };
}
