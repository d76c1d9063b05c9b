using System.Text.Json;
using Json.Schema;
using Tickover.Records.Carrying;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Tests.Carrying;

/// <summary>The schemas in docs/schemas are those of the types, and an export follows them.</summary>
public sealed class SchemaTests
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    public static TheoryData<string> Names => [.. RecordSchemas.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task The_schema_in_the_documents_is_the_one_of_the_types(string name)
    {
        var path = Path.Combine(Repository.Root, "docs", "schemas", name);
        if (Environment.GetEnvironmentVariable("TICKOVER_ACCEPT") is "1")
        {
            await File.WriteAllTextAsync(path, RecordSchemas.All[name], Cancellation);
        }

        Assert.Equal(RecordSchemas.All[name], await File.ReadAllTextAsync(path, Cancellation));
    }

    [Fact]
    public async Task An_export_follows_its_schemas()
    {
        using var open = await FullRecord.BeginAsync(new SqliteHome());
        var file = Zips.NewFile;
        await RecordExport.WriteAsync(open.Store, file, null, Cancellation);
        var entries = Zips.Entries(file);

        Assert.All(RecordKinds.All, kind => Valid($"record-{kind.Name}.schema.json", entries[$"items/{kind.Name}.json"]));
        Valid("record-journal.schema.json", entries["journal.json"]);
        Valid("record-manifest.schema.json", entries["manifest.json"]);
        Assert.All(RecordSchemas.All, s => Assert.Equal(s.Value, Zips.Text(file, $"schemas/{s.Key}")));
    }

    [Theory]
    [InlineData("record-Finding.schema.json", "[{ \"severity\": \"Deadly\" }]")]
    [InlineData("record-Finding.schema.json", "[{ \"visit\": \"../../visit\" }]")]
    [InlineData("record-Reading.schema.json", "[{ \"si\": \"much\" }]")]
    [InlineData("record-manifest.schema.json", "{ \"version\": \"one\" }")]
    public void A_schema_refuses_what_is_not_its_form(string name, string json)
    {
        using var document = JsonDocument.Parse(json);

        Assert.False(JsonSchema.FromText(RecordSchemas.All[name]).Evaluate(document.RootElement).IsValid);
    }

    private static void Valid(string schema, byte[] json)
    {
        using var document = JsonDocument.Parse(json);
        var result = JsonSchema.FromText(RecordSchemas.All[schema]).Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, schema + JsonSerializer.Serialize(result.Details?.Where(d => !d.IsValid)));
    }
}
