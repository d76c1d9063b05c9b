using System.Text.Json;
using Tickover.Records.Model;

namespace Tickover.Records.Carrying;

/// <summary>An act of the journal as an export holds it.</summary>
internal sealed record CarriedAct(
    long Number,
    Guid Key,
    string Kind,
    string Words,
    DateTimeOffset At,
    Guid? Person,
    string Device,
    Guid? Visit,
    long? Undoes,
    long? UndoneBy,
    IReadOnlyList<CarriedChange> Changes)
{
    /// <summary>An act with the changes that are carried.</summary>
    public static CarriedAct Of(ActRow act, IEnumerable<ChangeRow> changes) => new(
        act.Number,
        act.Key,
        act.Kind.ToString(),
        act.Words,
        act.At,
        act.Person?.Value,
        act.Device,
        act.Visit?.Value,
        act.Undoes,
        act.UndoneBy,
        [.. changes.OrderBy(c => c.Ordinal).Select(c => new CarriedChange(c.Ordinal, c.Kind, c.Item, c.Version, c.Before is null ? null : Element(c.Before), Element(c.After)))]);

    private static JsonElement Element(string json) => JsonElement.Parse(json);
}
