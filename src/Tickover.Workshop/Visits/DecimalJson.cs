using System.Text.Json;
using System.Text.Json.Serialization;

namespace Tickover.Workshop.Visits;

/// <summary>Writes sums of money and hours without trailing zeros: one kind of database gives back 12.50, another 12.5, and they are one sum.</summary>
internal sealed class DecimalJson : JsonConverter<decimal>
{
    /// <summary>Dividing by a one with all its zeros takes the zeros off and leaves the value.</summary>
    private const decimal One = 1.0000000000000000000000000000m;

    /// <inheritdoc/>
    public override decimal Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDecimal();

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, decimal value, JsonSerializerOptions options) => writer.WriteNumberValue(value / One);
}
