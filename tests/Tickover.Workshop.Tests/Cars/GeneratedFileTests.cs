using System.Text.Json;
using Json.Schema;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Tests.Cars;

public class GeneratedFileTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(CarDocument.Schema());

    public static TheoryData<string> Sound => SampleTests.Sound;

    [Fact]
    public void The_committed_schema_is_the_generated_one() =>
        Repository.AssertGenerated("docs/schemas/car.schema.json", CarDocument.Schema());

    [Fact]
    public void The_committed_guide_is_the_generated_one() =>
        Repository.AssertGenerated("docs/car-document.md", CarDocument.Guide());

    [Theory]
    [MemberData(nameof(Sound))]
    public void A_sample_obeys_the_schema(string name) => Assert.True(Obeys(Repository.Sample(name)));

    [Fact]
    public void The_twin_of_the_tests_obeys_the_schema() => Assert.True(Obeys(CarTexts.Twin));

    [Fact]
    public void The_faulty_sample_breaks_the_schema() => Assert.False(Obeys(Repository.Sample("faulty")));

    [Theory]
    [InlineData("\"bore\": \"80 mm\"", "\"bore\": 80")]
    [InlineData("\"bore\": \"80 mm\"", "\"bore\": \"80\"")]
    [InlineData("\"bore\": \"80 mm\"", "\"bohre\": \"80 mm\"")]
    [InlineData("\"bore\": \"80 mm\", ", "")]
    [InlineData("\"feeds\": [1]", "\"feeds\": \"1\"")]
    [InlineData("tickover-car-1", "tickover-car-2")]
    public void The_schema_finds_what_a_form_can_find(string old, string replacement) =>
        Assert.False(Obeys(CarTexts.TwinWith(old, replacement)));

    [Fact]
    public void The_guides_example_is_a_sound_car()
    {
        var guide = CarDocument.Guide();
        var start = guide.IndexOf("```json\n", StringComparison.Ordinal) + "```json\n".Length;
        var example = guide[start..guide.IndexOf("```", start, StringComparison.Ordinal)];

        Assert.All(CarTexts.Sound(example).Barrels, b => Assert.Single(b.Cylinders));
        Assert.True(Obeys(example));
    }

    [Fact]
    public void The_guide_names_every_figure()
    {
        var guide = CarDocument.Guide();

        Assert.All(
            FigureCatalogue.Engine.Concat(FigureCatalogue.Barrel).Concat(FigureCatalogue.Ambient),
            e => Assert.Contains($"| `{e.Name}` | {e.Definition.Label}: ", guide, StringComparison.Ordinal));
    }

    private static bool Obeys(string json)
    {
        using var document = JsonDocument.Parse(json);
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
