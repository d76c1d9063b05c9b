using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Tickover.Cli.Json;

/// <summary>Writers of the commands' JSON, made when the program is built: reflection would cost a tenth of a second at each start.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UseStringEnumConverter = true,
    WriteIndented = true)]
[JsonSerializable(typeof(CheckDocument))]
[JsonSerializable(typeof(MixtureDocument))]
[JsonSerializable(typeof(ExplainDocument))]
[JsonSerializable(typeof(RecordDocument))]
[JsonSerializable(typeof(JetsDocument))]
[JsonSerializable(typeof(NextDocument))]
[JsonSerializable(typeof(LogDocument))]
[JsonSerializable(typeof(LinkageReport))]
[JsonSerializable(typeof(WallReport))]
[JsonSerializable(typeof(LeakReport))]
[JsonSerializable(typeof(TankReport))]
[JsonSerializable(typeof(SenderReport))]
[JsonSerializable(typeof(GaugeReport))]
[JsonSerializable(typeof(GasLine))]
[JsonSerializable(typeof(GasTableDocument))]
[JsonSerializable(typeof(BalanceDocument))]
[JsonSerializable(typeof(JetBenchDocument))]
[JsonSerializable(typeof(SupplyReport))]
[JsonSerializable(typeof(FaultReport))]
[JsonSerializable(typeof(LevelReport))]
[JsonSerializable(typeof(WearReport))]
[JsonSerializable(typeof(BuildReport))]
internal sealed partial class CommandJson : JsonSerializerContext
{
    /// <summary>Writers that leave λ and ° readable; the output is no HTML.</summary>
    public static CommandJson Readable => field ??= new(new JsonSerializerOptions(Default.Options)
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });

    /// <summary>The same, each document on one line.</summary>
    public static CommandJson OneLine => field ??= new(new JsonSerializerOptions(Default.Options)
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        WriteIndented = false,
    });
}
