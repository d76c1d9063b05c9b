using System.Text.Json;
using System.Text.Json.Serialization;

namespace Tickover.Workshop.Visits;

/// <summary>Writes identifiers as their number.</summary>
internal sealed class IdJson : JsonConverterFactory
{
    /// <inheritdoc/>
    public override bool CanConvert(Type typeToConvert) => typeToConvert.IsGenericType && typeToConvert.GetGenericTypeDefinition() == typeof(Id<>);

    /// <inheritdoc/>
    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        (JsonConverter)Activator.CreateInstance(typeof(OfType<>).MakeGenericType(typeToConvert.GetGenericArguments()))!;

    private sealed class OfType<T> : JsonConverter<Id<T>>
    {
        public override Id<T> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            Id.Read<T>(reader.GetString()) ?? throw new JsonException("This is no identifier.");

        public override void Write(Utf8JsonWriter writer, Id<T> value, JsonSerializerOptions options) => writer.WriteStringValue(value.ToString());
    }
}
