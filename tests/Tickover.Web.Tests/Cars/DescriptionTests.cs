using System.Net;
using Tickover.Workshop.Cars;

namespace Tickover.Web.Tests.Cars;

public sealed class DescriptionTests
{
    private const string Page = "/cars/osprey-v8";

    [Fact]
    public async Task Every_figure_of_barrel_engine_and_day_has_a_field_with_its_range_and_origin()
    {
        await using var app = await TestApp.StartAsync("osprey-v8");

        var page = await app.PageAsync(Page);

        foreach (var entry in FigureCatalogue.Barrel.Concat(FigureCatalogue.Engine).Concat(FigureCatalogue.Ambient))
        {
            var field = page.QuerySelector($"input[name='{entry.Definition.Key}']");
            Assert.True(field is not null, entry.Definition.Key);
            var about = page.GetElementById(field.GetAttribute("aria-describedby")!)!.TextContent;
            Assert.Contains(entry.Definition.Help, about, StringComparison.Ordinal);
            Assert.Contains(" to ", about, StringComparison.Ordinal);
        }

        var spindle = page.GetElementById("f-barrel-spindleDiameter-about")!.TextContent;
        Assert.Contains("Empty: 9.2 mm. Computed", spindle, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("34,5", 34.5e-3)]
    [InlineData("34.5", 34.5e-3)]
    [InlineData("34.5 mm", 34.5e-3)]
    [InlineData("1,25 in", 31.75e-3)]
    public async Task A_size_typed_either_way_is_kept(string typed, double metres)
    {
        await using var app = await TestApp.StartAsync("osprey-v8");

        using var answer = await app.PostFormAsync(Page, Page, ("barrel.choke", typed));

        Assert.Equal($"{Page}?done=1", answer.Headers.Location!.OriginalString);
        var car = CarDocument.Read(app.Document("osprey-v8")).Car!;
        Assert.All(car.Barrels, b => Assert.Equal(metres, b.Figures.Si("barrel.choke"), 9));
    }

    [Fact]
    public async Task One_barrel_is_changed_alone()
    {
        await using var app = await TestApp.StartAsync("osprey-v8");
        var page = $"{Page}?barrel=3";

        using var answer = await app.PostFormAsync(page, page, ("carburettors[1].barrels[0].idleJet", "57"));

        Assert.Equal($"{Page}?barrel=3&done=1", answer.Headers.Location!.OriginalString);
        var car = CarDocument.Read(app.Document("osprey-v8")).Car!;
        Assert.Equal([3], car.Barrels.Where(b => Math.Abs(b.Figures.Si("barrel.idleJet") - 57e-5) < 1e-9).Select(b => b.Number));
        var fitted = FigureText.Show(car.Barrels[0].Figures["barrel.idleJet"]!);
        var said = (await app.PageAsync(Page)).Body!.TextContent;
        Assert.True(said.Contains($"Differs between barrels: {fitted}, 57", StringComparison.Ordinal) || said.Contains($"Differs between barrels: 57, {fitted}", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Faults_stand_beside_their_fields_and_nothing_typed_is_lost()
    {
        await using var app = await TestApp.StartAsync("osprey-v8");
        var before = app.Document("osprey-v8");

        using var answer = await app.PostFormAsync(
            Page, Page, ("barrel.choke", "36 furlongs"), ("engine.stroke", "-80"), ("barrel.mainJet", "150"));
        var page = await TestApp.ParseAsync(answer);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Equal(before, app.Document("osprey-v8"));
        Assert.Equal(2, page.QuerySelectorAll(".field.faulty").Length);
        Assert.Contains("furlongs", page.QuerySelector("#f-barrel-choke-about .wrong")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("36 furlongs", page.QuerySelector("input[name='barrel.choke']")!.GetAttribute("value"));
        Assert.Equal("-80", page.QuerySelector("input[name='engine.stroke']")!.GetAttribute("value"));
        Assert.Equal("150", page.QuerySelector("input[name='barrel.mainJet']")!.GetAttribute("value"));
        Assert.Equal("true", page.QuerySelector("input[name='barrel.choke']")!.GetAttribute("aria-invalid"));
    }

    [Fact]
    public async Task Two_sizes_that_are_only_possible_together_are_kept_together()
    {
        await using var app = await TestApp.StartAsync("osprey-v8");

        using var answer = await app.PostFormAsync(Page, Page, ("barrel.choke", "47 mm"), ("barrel.throttleBore", "56 mm"));

        Assert.Equal($"{Page}?done=2", answer.Headers.Location!.OriginalString);
    }

    [Fact]
    public async Task An_emptied_field_and_the_default_button_go_back_to_the_default()
    {
        await using var app = await TestApp.StartAsync("osprey-v8");

        using var emptied = await app.PostFormAsync(Page, Page, ("barrel.idleBleed", ""));
        using var reset = await app.PostFormAsync(Page, Page, ("reset", "barrel.pumpJet"));
        var page = await app.PageAsync(Page);

        Assert.Equal("", page.QuerySelector("input[name='barrel.idleBleed']")!.GetAttribute("value"));
        Assert.Equal("", page.QuerySelector("input[name='barrel.pumpJet']")!.GetAttribute("value"));
    }

    [Fact]
    public async Task Undo_goes_back_to_the_document_before_byte_for_byte()
    {
        await using var app = await TestApp.StartAsync("osprey-v8");
        var before = app.Document("osprey-v8");

        using var kept = await app.PostFormAsync(Page, Page, ("barrel.mainJet", "152"));
        Assert.NotEqual(before, app.Document("osprey-v8"), StringComparer.Ordinal);
        using var undone = await app.PostFormAsync(Page, $"{Page}/undo");

        Assert.Equal(before, app.Document("osprey-v8"), StringComparer.Ordinal);
    }

    [Fact]
    public async Task A_form_made_from_an_older_document_does_not_overwrite_the_newer_one()
    {
        await using var app = await TestApp.StartAsync("osprey-v8");

        using var answer = await app.PostFormAsync(Page, Page, ("version", "0123456789abcdef"), ("barrel.mainJet", "150"));

        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Equal(Repository.Sample("osprey-v8"), app.Document("osprey-v8"));
        Assert.Equal("150", (await TestApp.ParseAsync(answer)).QuerySelector("input[name='barrel.mainJet']")!.GetAttribute("value"));
    }
}
