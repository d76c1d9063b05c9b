using Tickover.Reports.Gauges;
using Tickover.Reports.Leaks;
using Tickover.Reports.Mixture;
using Tickover.Reports.Paper;
using Tickover.Reports.Supply;
using Tickover.Reports.Tanks;
using Tickover.Reports.Walls;
using Tickover.Workshop.Gauges;
using Tickover.Workshop.Leaks;
using Tickover.Workshop.Supply;
using Tickover.Workshop.Tanks;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Walls;
using Tickover.Workshop.Worksheets;

namespace Tickover.Reports.HandOver.Parts;

/// <summary>A part of 2: what was measured for a computation of its own on this visit, what it came to, and its picture.</summary>
internal static class SheetPart
{
    internal static IEnumerable<Block> Of(Telling t)
    {
        var told = t.Record.Worksheets.Where(s => s.Visit == t.Visit.Id && t.Record.SheetOf(s.Form, s.Name) == s).Select(s => (Sheet: s, Account: SheetAccounts.Of(s))).Where(s => s.Account is not null).ToList();
        if (told.Count == 0)
        {
            yield break;
        }

        yield return new Heading(3, t.Say("Measured and worked out"));
        foreach (var (sheet, account) in told)
        {
            var named = new Paragraph(Prose.Bold(PaperText.Capital(sheet.Name)).Then($", {t.ShortDay(sheet.On)}"));
            var said = new Paragraph(Prose.Bold($"{account!.Heading}. ").Then(account.Sentences.Count > 0 ? account.Sentences[0] : ""));
            yield return Picture(sheet) is not { } picture ? new Together([named, said])
                : sheet.Form is TankDocument.Format ? new Together([named, picture, new Paragraph(Prose.Of(picture.Label)), said])
                : new Together([named, picture, said]);
            if (account.Sentences.Count > 1)
            {
                yield return new Items([.. account.Sentences.Skip(1).Select(Prose.Of)]);
            }
        }
    }

    private static Figure? Picture(Worksheet sheet) => sheet.Form switch
    {
        WallDocument.Format => Wall(sheet.Document),
        LeakDocument.Format => Leak(sheet.Document),
        GaugeDocument.Format => Gauge(sheet.Document),
        SupplyDocument.Format => Supply(sheet.Document),
        TankDocument.Format => Tanks(sheet.Document),
        _ => null,
    };

    private static Figure? Wall(string document)
    {
        if (WallDocument.Read(document).Survey is not { } survey)
        {
            return null;
        }

        var view = new WallView { Analysis = WallAnalyst.Of(survey), IdPrefix = "wall" };
        var frame = new WallFrame(view);
        return new Figure(d => WallMapPicture.Draw(d, view, frame), frame.Width, frame.Height, WallSentence.Of(view.Analysis));
    }

    private static Figure? Leak(string document)
    {
        if (LeakDocument.Read(document).Sheet is not { } sheet)
        {
            return null;
        }

        var analysis = LeakAnalyst.Of(sheet);
        var frame = LeakPicture.Frame(analysis, PictureSize.Full);
        return new Figure(d => LeakPicture.Draw(d, analysis, PictureSize.Full, frame), frame.Width, LeakPicture.Height(frame, PictureSize.Full), LeakPicture.Sentence(analysis));
    }

    private static Figure? Gauge(string document)
    {
        if (GaugeDocument.Read(document).Story is not { } story)
        {
            return null;
        }

        var analysis = GaugeAnalyst.Of(story);
        var (moments, frame) = (analysis.Moments(), GaugeStripPicture.Frame(analysis.Moments()));
        return new Figure(d => GaugeStripPicture.Draw(d, moments, frame), frame.Width, GaugeStripPicture.Height(frame), analysis.Advice[0].Heading);
    }

    private static Figure? Supply(string document)
    {
        if (SupplyDocument.Read(document).Supply is not { } supply)
        {
            return null;
        }

        var view = new SupplyView { Analysis = SupplyAnalyst.Of(supply), IdPrefix = "supply" };
        var frame = new SupplyFrame(view);
        return new Figure(d => SupplyPicture.Draw(d, view, frame), frame.Width, frame.Bottom, SupplySentence.Of(view));
    }

    // With what was last known to be in; where nothing was read, half full, and the sentence says so.
    private static Figure? Tanks(string document)
    {
        if (TankDocument.Read(document).Set is not { Tanks.Count: > 0 } set)
        {
            return null;
        }

        var known = set.LastKnownLitres is { } litres ? Math.Min(litres, set.CapacityLitres) : (double?)null;
        var view = new TankView { Analysis = TankAnalyst.Of(set), Litres = known ?? set.CapacityLitres / 2, IdPrefix = "tanks" };
        var frame = new TankFrame(view);
        var drawn = known is null ? "Drawn half full, for nobody noted what was in" : "Drawn with what was in when it was last read";
        return new Figure(d => TankPicture.Draw(d, view, frame), frame.Width, frame.Height, $"{drawn}. {TankSentence.Of(view)}");
    }
}
