using System.Text.Json;

namespace Tickover.Web.Api;

/// <summary>One item of an act.</summary>
/// <param name="Kind">Kind of the item, such as "Reading".</param>
/// <param name="Item">The item, as its schema in docs/schemas describes it.</param>
public sealed record ItemQuestion(string Kind, JsonElement Item);
