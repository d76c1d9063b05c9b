using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace Tickover.Workshop.Visits;

/// <summary>The kinds of items a record holds, and how they are written as JSON: in the journal, in an export and for programs.</summary>
public static class RecordKinds
{
    /// <summary>JSON of items: camelCase, enumerations as words, identifiers and places as texts.</summary>
    public static readonly JsonSerializerOptions Json = WithConverters(new(JsonSerializerDefaults.Web)
    {
        TypeInfoResolver = new DefaultJsonTypeInfoResolver(),
        NumberHandling = JsonNumberHandling.Strict,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });

    /// <summary>All kinds, those others refer to first.</summary>
    public static readonly IReadOnlyList<Type> All =
    [
        typeof(House), typeof(Person), typeof(Instrument), typeof(Owner), typeof(CustomerCar), typeof(Visit), typeof(CarDescription), typeof(Component),
        typeof(StageMark), typeof(Reading), typeof(Finding), typeof(Photograph), typeof(PartLine), typeof(TimeLine), typeof(Approval), typeof(WorkNote),
        typeof(SignOff), typeof(CautionSeen), typeof(Signature), typeof(RoadRun), typeof(StockJet), typeof(JetFitting), typeof(LoggerLayout), typeof(ScrewTurn), typeof(Worksheet),
    ];

    private static readonly Dictionary<string, Type> ByName = All.ToDictionary(t => t.Name, StringComparer.Ordinal);

    /// <summary>Adds how identifiers, places, money and enumerations are written.</summary>
    /// <param name="options">The options of whoever writes.</param>
    /// <returns>The same options.</returns>
    public static JsonSerializerOptions WithConverters(JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        options.Converters.Add(new JsonStringEnumConverter());
        options.Converters.Add(new IdJson());
        options.Converters.Add(new PlaceJson());
        options.Converters.Add(new DecimalJson());
        return options;
    }

    /// <summary>The name of an item's kind.</summary>
    /// <param name="item">The item.</param>
    /// <returns>A name such as "Finding".</returns>
    public static string NameOf(RecordItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return item.GetType().Name;
    }

    /// <summary>The type of a kind.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>The type, or null where there is no such kind.</returns>
    public static Type? Find(string name) => ByName.GetValueOrDefault(name);

    /// <summary>Writes an item.</summary>
    /// <param name="item">The item.</param>
    /// <returns>JSON in one line.</returns>
    public static string Write(RecordItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return JsonSerializer.Serialize(item, item.GetType(), Json);
    }

    /// <summary>Reads an item.</summary>
    /// <param name="kind">Name of its kind.</param>
    /// <param name="json">What <see cref="Write"/> wrote.</param>
    /// <returns>The item.</returns>
    /// <exception cref="JsonException">The text is no such item.</exception>
    public static RecordItem Read(string kind, string json) =>
        (RecordItem?)JsonSerializer.Deserialize(json, Find(kind) ?? throw new JsonException($"\"{kind}\" is no kind of item."), Json)
        ?? throw new JsonException("The item is empty.");
}
