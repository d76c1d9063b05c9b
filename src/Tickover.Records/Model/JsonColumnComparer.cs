using System.Text.Json;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Model;

/// <summary>Compares what a <see cref="JsonColumn{T}"/> keeps.</summary>
/// <typeparam name="T">The list or table.</typeparam>
internal sealed class JsonColumnComparer<T>() : ValueComparer<T>(
    (a, b) => string.Equals(JsonSerializer.Serialize(a, RecordKinds.Json), JsonSerializer.Serialize(b, RecordKinds.Json), StringComparison.Ordinal),
    value => JsonSerializer.Serialize(value, RecordKinds.Json).GetHashCode(StringComparison.Ordinal),
    value => value);
