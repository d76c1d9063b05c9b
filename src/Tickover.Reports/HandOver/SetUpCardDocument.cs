using Tickover.Reports.HandOver.Card;
using Tickover.Reports.Paper;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.HandOver;

/// <summary>The set-up card that stays with the car: every setting on one sheet.</summary>
/// <remarks>
/// Always one sheet: the type shrinks to 7.5 pt, and what still does not fit is left out from the end, which the last line says.
/// The order is therefore that of need beside the car, the log of changes last.
/// </remarks>
public static class SetUpCardDocument
{
    /// <summary>Writes the card.</summary>
    /// <param name="record">The visit.</param>
    /// <param name="settings">What is not in the record.</param>
    /// <returns>The document, for <see cref="PaperPdf"/> and <see cref="PaperHtml"/>.</returns>
    /// <exception cref="ArgumentNullException">The record or the settings are missing.</exception>
    public static PaperDocument Of(VisitRecord record, HandOverSettings settings)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(settings);
        var telling = new Telling(record, settings);
        var figures = new CardFigures(telling);
        return new PaperDocument
        {
            Title = $"Set-up card of {record.Car.Name}, visit {record.Visit.Number}",
            Author = telling.House.Name.Length > 0 ? telling.House.Name : "The workshop",
            Language = telling.Language,
            Foot = $"Set-up card · {record.Car.Name} · visit {record.Visit.Number} · {telling.Day(settings.On)}{(telling.House.Demonstration ? " · invented example" : "")}",
            FileName = $"set-up-card-{record.Visit.Number}",
            OneSheet = true,
            Blocks = [.. CardHead.Of(telling, figures), .. CardTables.Of(telling, figures), .. CardRoad.Of(telling), .. CardFoot.Of(telling, figures)],
        };
    }
}
