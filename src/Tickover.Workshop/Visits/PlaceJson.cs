using System.Text.Json;
using System.Text.Json.Serialization;

namespace Tickover.Workshop.Visits;

/// <summary>Writes places as their text.</summary>
internal sealed class PlaceJson : JsonConverter<Place>
{
    /// <inheritdoc/>
    public override Place Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Place.Read(reader.GetString()) ?? throw new JsonException("This is no place.");

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Place value, JsonSerializerOptions options) => writer.WriteStringValue(value.ToString());
}
