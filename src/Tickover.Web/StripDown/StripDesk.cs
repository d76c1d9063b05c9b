using Tickover.Web.Worksheets;
using Tickover.Workshop.StripDown.Levels;
using Tickover.Workshop.StripDown.Wear;

namespace Tickover.Web.StripDown;

/// <summary>Sheets of the strip-down in hand.</summary>
/// <param name="options">Names the folder of the samples.</param>
public sealed class StripDesk(WebAppOptions options)
{
    /// <summary>Float levels, worked out.</summary>
    public DocumentShelf<LevelInHand> Levels { get; } = new(options.SamplesFolder, ".level.json", text => LevelDocument.Read(text).Sheet is { } sheet ? Of(sheet) : null);

    /// <summary>Wear, worked out.</summary>
    public DocumentShelf<WearInHand> Wear { get; } = new(options.SamplesFolder, ".wear.json", text => WearDocument.Read(text).Sheet is { } sheet ? Of(sheet) : null);

    /// <summary>Works out a sheet of levels.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <returns>It with what it comes to.</returns>
    public static LevelInHand Of(LevelSheet sheet) => new(sheet, LevelJudge.Judge(sheet));

    /// <summary>Works out a sheet of wear.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <returns>It with what it comes to.</returns>
    public static WearInHand Of(WearSheet sheet) => new(sheet, WearJudge.Judge(sheet));
}
