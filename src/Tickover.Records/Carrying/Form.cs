using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Tickover.Records.Carrying;

/// <summary>The form of an export: names of the entries, version, limits.</summary>
internal static class Form
{
    /// <summary>What an export calls itself.</summary>
    public const string Name = "tickover-record";

    /// <summary>Version of the form; counted up when an older program could not read it any more.</summary>
    public const int Version = 1;

    public const string Manifest = "manifest.json";
    public const string Journal = "journal.json";
    public const string ReadMe = "README.txt";

    /// <summary>Most entries taken in: two hundred thousand photographs are a long life's work.</summary>
    public const int MostEntries = 250_000;

    /// <summary>Largest list of items or journal taken in, in bytes as written out.</summary>
    public const long LargestList = 512L * 1024 * 1024;

    /// <summary>Largest manifest taken in.</summary>
    public const long LargestManifest = 64L * 1024 * 1024;

    /// <summary>Largest picture taken in: far above any that this program writes.</summary>
    public const long LargestPicture = 16L * 1024 * 1024;

    /// <summary>Zip keeps no moment but one of the calendar from 1980 on; one for all, so that equal records give equal files.</summary>
    public static readonly DateTimeOffset Moment = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>JSON of the manifest.</summary>
    public static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web)
    {
        TypeInfoResolver = new DefaultJsonTypeInfoResolver(),
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Items(Type kind) => $"items/{kind.Name}.json";

    public static string Table(Type kind) => $"tables/{kind.Name}.csv";

    public static string Picture(Guid photograph) => $"pictures/{photograph:N}.jpg";

    public static string Schema(string name) => $"schemas/{name}";
}
