using System.Text.Json;

namespace Tickover.Records.Carrying;

/// <summary>What an act did to one item, as an export holds it.</summary>
internal sealed record CarriedChange(int Ordinal, string Kind, Guid Item, int Version, JsonElement? Before, JsonElement After);
