using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Model;

/// <summary>Keeps identifiers as their number.</summary>
/// <typeparam name="T">What is named.</typeparam>
internal sealed class IdConverter<T>() : ValueConverter<Id<T>, Guid>(id => id.Value, value => new Id<T>(value));
