using System.Text.Json.Serialization;

namespace Tickover.Workshop.Visits;

/// <summary>Anything the workshop's record keeps, with an identifier of its own type.</summary>
/// <typeparam name="T">The type itself.</typeparam>
public abstract record RecordItem<T> : RecordItem
    where T : RecordItem<T>
{
    /// <summary>Which one it is.</summary>
    public Id<T> Id { get; init; } = Visits.Id.New<T>();

    /// <inheritdoc/>
    [JsonIgnore]
    public override Guid Key => Id.Value;
}
