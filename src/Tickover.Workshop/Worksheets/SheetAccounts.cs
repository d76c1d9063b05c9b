using Tickover.Workshop.FaultFinding;
using Tickover.Workshop.Gauges;
using Tickover.Workshop.Leaks;
using Tickover.Workshop.StripDown.Build;
using Tickover.Workshop.StripDown.Jets;
using Tickover.Workshop.StripDown.Levels;
using Tickover.Workshop.StripDown.Wear;
using Tickover.Workshop.Supply;
using Tickover.Workshop.Tanks;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Walls;

namespace Tickover.Workshop.Worksheets;

/// <summary>Works out what worksheets come to.</summary>
public static class SheetAccounts
{
    /// <summary>What a worksheet comes to.</summary>
    /// <param name="sheet">The worksheet.</param>
    /// <returns>The account; null where its form describes and judges nothing, or its document can no longer be read.</returns>
    public static SheetAccount? Of(Worksheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return sheet.Form switch
        {
            WallDocument.Format => Wall(sheet.Document),
            LeakDocument.Format => Leak(sheet.Document),
            GaugeDocument.Format => Gauge(sheet.Document),
            TankDocument.Format => Tank(sheet.Document),
            SupplyDocument.Format => Supply(sheet.Document),
            JetSheetDocument.Format => Jets(sheet.Document),
            FaultCaseDocument.Format => Fault(sheet.Document),
            WearDocument.Format => Wear(sheet.Document),
            LevelDocument.Format => Levels(sheet.Document),
            BuildDocument.Format => Build(sheet.Document),
            _ => null,
        };
    }

    private static SheetAccount? Wall(string document)
    {
        if (WallDocument.Read(document).Survey is not { } survey)
        {
            return null;
        }

        var analysis = WallAnalyst.Of(survey);
        return new SheetAccount(analysis.Verdict.Heading, [analysis.Verdict.Why, .. analysis.Doubts], analysis.Verdict.IsNo);
    }

    private static SheetAccount? Leak(string document)
    {
        if (LeakDocument.Read(document).Sheet is not { } sheet)
        {
            return null;
        }

        var analysis = LeakAnalyst.Of(sheet);
        return new SheetAccount(analysis.Verdict.Heading, [analysis.Verdict.Why, LeakWords.Smallest(analysis), .. analysis.Doubts], analysis.Verdict.IsNo);
    }

    private static SheetAccount? Gauge(string document)
    {
        if (GaugeDocument.Read(document).Story is not { } story)
        {
            return null;
        }

        var advice = GaugeAnalyst.Of(story).Advice;
        return new SheetAccount(advice[0].Heading.TrimEnd('.'), [advice[0].Words, .. advice.Skip(1).Select(a => $"{Sentence(a.Heading)} {a.Words}")], IsNo: false);
    }

    private static SheetAccount? Tank(string document)
    {
        if (TankDocument.Read(document).Set is not { } set)
        {
            return null;
        }

        var analysis = TankAnalyst.Of(set);
        var holds = set.Tanks.Count switch
        {
            0 => FormattableString.Invariant($"Sender and gauge of a tank of {set.CapacityLitres:0} litres"),
            1 => FormattableString.Invariant($"The tank holds {set.CapacityLitres:0.0} litres to the brim"),
            _ => FormattableString.Invariant($"The tanks hold {set.CapacityLitres:0.0} litres to the brim: {string.Join(", ", set.Tanks.Select(t => FormattableString.Invariant($"{t.Name} {t.CapacityLitres:0.0}")))}"),
        };
        return new SheetAccount(holds, [.. analysis.TankAdvice.Concat(analysis.SenderAdvice).Where(a => !a.IsDanger).Select(a => $"{Sentence(a.Heading)} {a.Words}")], IsNo: false);
    }

    private static string Sentence(string heading) => heading.EndsWith('?') || heading.EndsWith('.') ? heading : $"{heading}.";

    private static SheetAccount? Supply(string document)
    {
        if (SupplyDocument.Read(document).Supply is not { } supply)
        {
            return null;
        }

        var analysis = SupplyAnalyst.Of(supply);
        return new SheetAccount(analysis.Verdict, [.. analysis.Findings.Where(f => f.Next.Length > 0).Select(f => $"{f.Heading}: {f.Words} {f.Next}")], !analysis.Carries);
    }

    // A case that is not settled is nobody's business but the workshop's.
    private static SheetAccount? Fault(string document)
    {
        if (FaultCaseDocument.Read(document, FaultKnowledge.Standard).Case is not { } given || FaultFinder.Weigh(FaultKnowledge.Standard, given) is not { Standing: FaultStanding.Found } outlook)
        {
            return null;
        }

        var told = string.Join("; ", given.Symptoms.Select(s => FaultKnowledge.Standard.Symptom(s)!.Words));
        return new SheetAccount($"{told}: {string.Join("; ", outlook.Found.Select(f => f.Cause.Words))}", [.. outlook.Found.Select(OutlookWords.ToDo)], IsNo: false);
    }

    private static SheetAccount? Wear(string document)
    {
        if (WearDocument.Read(document).Sheet is not { } sheet)
        {
            return null;
        }

        var answer = WearJudge.Judge(sheet);
        return new SheetAccount(answer.Verdict.TrimEnd('.'), [.. answer.Items.Where(i => i.Grade == WearGrade.Bad).Select(i => $"{char.ToUpperInvariant(WearWords.Name(i.Kind)[0])}{WearWords.Name(i.Kind)[1..]}, {i.Where}: {i.Words}")], answer.IsNo);
    }

    private static SheetAccount? Levels(string document)
    {
        if (LevelDocument.Read(document).Sheet is not { } sheet)
        {
            return null;
        }

        var answer = LevelJudge.Judge(sheet);
        return new SheetAccount(answer.Verdict.TrimEnd('.'), [.. answer.Carburettors.SelectMany(c => c.Words.Select(w => $"{char.ToUpperInvariant(c.Float.Where[0])}{c.Float.Where[1..]}: {w}"))], answer.IsNo);
    }

    private static SheetAccount? Build(string document)
    {
        if (BuildDocument.Read(document).Sheet is not { } sheet)
        {
            return null;
        }

        var answer = BuildPlanner.Of(sheet);
        return new SheetAccount(answer.Verdict.TrimEnd('.'), [.. answer.Settings.Select(s => $"{s.What}: {s.Value}. {s.How} From {s.Origin}.")], answer.IsNo);
    }

    private static SheetAccount? Jets(string document)
    {
        if (JetSheetDocument.Read(document).Sheet is not { } sheet)
        {
            return null;
        }

        var (jets, sets) = JetJudge.Judge(sheet);
        var odd = jets.Where(j => j.Finding is not (JetFinding.Agrees or JetFinding.Unknown)).ToList();
        var uneven = sets.Where(s => s.Outside.Count > 0).ToList();
        var heading = (odd.Count, uneven.Count) switch
        {
            (0, 0) => $"{jets.Count} jets measured: nothing is wrong with them",
            (0, _) => "Jets are what they say, but not alike",
            _ => $"{odd.Count} of {jets.Count} jets are not what they say",
        };
        return new SheetAccount(heading, [.. odd.Select(j => $"{char.ToUpperInvariant(j.Jet.Part[0])}{j.Jet.Part[1..]}, {j.Jet.Where}: {j.Words}"), .. uneven.Select(s => $"{s.Part} {s.Stamp}: the flows of {s.Count} differ by {100 * s.SpreadPart:0.#} %.")], odd.Count + uneven.Count > 0);
    }
}
