using System.Text.Json.Nodes;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Keeping;

/// <summary>Puts together what two people made of one item: a field only one of them changed is taken, a field both changed differently clashes.</summary>
internal static class ItemMerge
{
    /// <summary>Set by the record alone, so nobody's change.</summary>
    private static readonly HashSet<string> Stamps = new(StringComparer.Ordinal) { "version", "kept", "changed", "keptAt", "keptBy", "id" };

    /// <summary>Merges.</summary>
    /// <param name="was">What both started from; null where both made it new.</param>
    /// <param name="theirs">What stands now.</param>
    /// <param name="yours">What is asked for.</param>
    /// <param name="clashes">Gets the fields that clash, as (field, was, theirs, yours).</param>
    /// <returns>The merged item; its stamps are those of <paramref name="theirs"/>.</returns>
    public static RecordItem Of(RecordItem? was, RecordItem theirs, RecordItem yours, ICollection<(string Field, string Was, string Theirs, string Yours)> clashes)
    {
        var before = Fields(was ?? (RecordItem)Activator.CreateInstance(theirs.GetType())!);
        var standing = Fields(theirs);
        var asked = Fields(yours);
        foreach (var (field, wanted) in asked.ToList().Where(f => !Stamps.Contains(f.Key)))
        {
            if (Same(wanted, before[field]) || Same(wanted, standing[field]))
            {
                continue;
            }

            if (!Same(standing[field], before[field]))
            {
                clashes.Add((field, Text(before[field]), Text(standing[field]), Text(wanted)));
                continue;
            }

            standing[field] = wanted?.DeepClone();
        }

        return RecordKinds.Read(RecordKinds.NameOf(theirs), standing.ToJsonString(RecordKinds.Json));
    }

    private static JsonObject Fields(RecordItem item) => JsonNode.Parse(RecordKinds.Write(item))!.AsObject();

    private static bool Same(JsonNode? a, JsonNode? b) => JsonNode.DeepEquals(a, b);

    private static string Text(JsonNode? node) => node?.ToJsonString(RecordKinds.Json) ?? "null";
}
