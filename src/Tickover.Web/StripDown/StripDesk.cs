using Tickover.Web.Worksheets;
using Tickover.Workshop.StripDown.Levels;
using Tickover.Workshop.StripDown.Wear;
using Tickover.Workshop.Visits;

namespace Tickover.Web.StripDown;

/// <summary>Sheets of the strip-down in hand.</summary>
public sealed class StripDesk
{
    /// <summary>Makes the shelves.</summary>
    /// <param name="options">Names the folder of the samples.</param>
    public StripDesk(WebAppOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        Levels = new(options.SamplesFolder, ".level.json", text => LevelDocument.Read(text) is var (sheet, faults) && sheet is not null ? (new LevelInHand(sheet, LevelJudge.Judge(sheet)), []) : (null, faults));
        Wear = new(options.SamplesFolder, ".wear.json", text => WearDocument.Read(text) is var (sheet, faults) && sheet is not null ? (new WearInHand(sheet, WearJudge.Judge(sheet)), []) : (null, faults));
        Intake = new()
        {
            Address = "/strip-down",
            Title = "Levels and wear",
            Where = "Stripped carburettors, the set side by side",
            Ask = "A sheet as measured",
            Lead = "Dry heights of the floats; or spindles, plates, flanges, needles, pumps and tubes, barrel by barrel.",
            Guides = [("/level-document", "How levels are written down"), ("/wear-document", "How wear is written down")],
            Example = "tern.level.json or tern.wear.json",
            Cautions = [LevelCautions.All[0], WearCautions.All[2], WearCautions.All[3]],
            Stage = Stage.StripDown,
            Kinds =
            [
                IntakeKind.Of(LevelDocument.Format, Levels, "/levels", level => (level.Sheet.Name, level.Answer.Verdict, "")),
                IntakeKind.Of(WearDocument.Format, Wear, "/wear", wear => (wear.Sheet.Name, wear.Answer.Verdict, "")),
            ],
        };
    }

    /// <summary>Float levels, worked out.</summary>
    public DocumentShelf<LevelInHand> Levels { get; }

    /// <summary>Wear, worked out.</summary>
    public DocumentShelf<WearInHand> Wear { get; }

    /// <summary>Where they are taken in.</summary>
    public Intake Intake { get; }
}
