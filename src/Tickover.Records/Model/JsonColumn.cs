using System.Text.Json;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Model;

/// <summary>Keeps a short list or table inside a column as JSON.</summary>
/// <typeparam name="T">The list or table.</typeparam>
internal sealed class JsonColumn<T>() : ValueConverter<T, string>(
    value => JsonSerializer.Serialize(value, RecordKinds.Json), text => JsonSerializer.Deserialize<T>(text, RecordKinds.Json)!);
