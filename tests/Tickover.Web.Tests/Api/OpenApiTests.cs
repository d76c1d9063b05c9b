using System.Net.Http.Json;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Tickover.Web.Tests.Api;

/// <summary>Lints the description of the API against rules of our own; its form is that of the OpenAPI Specification 3.1.</summary>
public sealed partial class OpenApiTests
{
    private static readonly string[] Methods = ["get", "put", "post", "delete", "patch", "head", "options", "trace"];

    [Fact]
    public async Task The_description_names_its_version_and_only_the_API()
    {
        var document = await ReadAsync();

        Assert.StartsWith("3.1", document.GetProperty("openapi").GetString(), StringComparison.Ordinal);
        Assert.Equal("Tickover", document.GetProperty("info").GetProperty("title").GetString());
        Assert.NotEmpty(document.GetProperty("info").GetProperty("version").GetString()!);
        Assert.All(document.GetProperty("paths").EnumerateObject(), p => Assert.StartsWith("/api/", p.Name, StringComparison.Ordinal));
        Assert.True(document.GetProperty("paths").EnumerateObject().Count() >= 5);
    }

    [Fact]
    public async Task Paths_are_kebab_and_without_a_trailing_stroke()
    {
        var document = await ReadAsync();

        Assert.All(document.GetProperty("paths").EnumerateObject(), p => Assert.Matches(Kebab(), p.Name));
    }

    [Fact]
    public async Task Every_operation_has_a_unique_id_a_summary_and_a_tag()
    {
        var operations = Operations(await ReadAsync());

        Assert.All(operations, o =>
        {
            Assert.True(o.Operation.TryGetProperty("operationId", out var id) && CamelCase().IsMatch(id.GetString()!), $"{o.At}: operationId");
            Assert.True(o.Operation.TryGetProperty("summary", out var summary) && summary.GetString()!.EndsWith('.'), $"{o.At}: summary");
            Assert.True(o.Operation.TryGetProperty("tags", out var tags) && tags.GetArrayLength() == 1, $"{o.At}: one tag");
        });
        Assert.Distinct(operations.Select(o => o.Operation.GetProperty("operationId").GetString()!), StringComparer.Ordinal);
    }

    [Fact]
    public async Task Every_answer_has_a_type_and_every_refusal_is_problem_details()
    {
        var operations = Operations(await ReadAsync());

        Assert.All(operations, o =>
        {
            var answers = o.Operation.GetProperty("responses").EnumerateObject().ToList();
            Assert.Contains(answers, a => a.Name[0] == '2');
            Assert.All(["401", "403", "429"], status => Assert.Contains(answers, a => string.Equals(a.Name, status, StringComparison.Ordinal)));
            foreach (var answer in answers.Where(a => a.Name is not "204"))
            {
                var content = answer.Value.GetProperty("content").EnumerateObject().ToList();
                Assert.True(content.All(c => c.Value.TryGetProperty("schema", out _)), $"{o.At} {answer.Name}: schema");
                if (answer.Name[0] is '4' or '5')
                {
                    var only = Assert.Single(content);
                    Assert.Equal("application/problem+json", only.Name);
                    Assert.EndsWith("/ProblemDetails", only.Value.GetProperty("schema").GetProperty("$ref").GetString(), StringComparison.Ordinal);
                }
            }
        });
    }

    [Fact]
    public async Task Every_parameter_of_a_path_is_declared_and_every_reference_leads_somewhere()
    {
        var document = await ReadAsync();
        var schemas = document.GetProperty("components").GetProperty("schemas").EnumerateObject().Select(s => s.Name).ToHashSet(StringComparer.Ordinal);

        foreach (var (at, operation) in Operations(document))
        {
            var declared = operation.TryGetProperty("parameters", out var parameters)
                ? parameters.EnumerateArray().Where(p => p.GetProperty("in").GetString() is "path").Select(p => p.GetProperty("name").GetString()!).ToList()
                : [];
            var named = PathParameter().Matches(at).Select(m => m.Groups["name"].Value);
            Assert.Equal(string.Join(' ', named.Order(StringComparer.Ordinal)), string.Join(' ', declared.Order(StringComparer.Ordinal)));
        }

        Assert.All(Reference().Matches(document.GetRawText()).Select(m => m.Groups["name"].Value), name => Assert.Contains(name, schemas));
    }

    private static async Task<JsonElement> ReadAsync()
    {
        await using var app = await TestApp.LookAsync();
        return await app.Client.GetFromJsonAsync<JsonElement>("/openapi/v1.json", TestContext.Current.CancellationToken);
    }

    private static List<(string At, JsonElement Operation)> Operations(JsonElement document) =>
    [
        .. from path in document.GetProperty("paths").EnumerateObject()
           from member in path.Value.EnumerateObject()
           where Methods.Contains(member.Name, StringComparer.Ordinal)
           select ($"{member.Name} {path.Name}", member.Value),
    ];

    [GeneratedRegex("^(?:/(?:[a-z0-9]+(?:-[a-z0-9]+)*|\\{[a-z][A-Za-z0-9]*\\}))+$", RegexOptions.None, 1000)]
    private static partial Regex Kebab();

    [GeneratedRegex("^[a-z][A-Za-z0-9]+$", RegexOptions.None, 1000)]
    private static partial Regex CamelCase();

    [GeneratedRegex("\\{(?<name>[^}]+)\\}", RegexOptions.None, 1000)]
    private static partial Regex PathParameter();

    [GeneratedRegex("\"#/components/schemas/(?<name>[^\"/]+)\"", RegexOptions.None, 1000)]
    private static partial Regex Reference();
}
