using System.Net;

namespace Tickover.Web.Tests.Cars;

public sealed class CarPagesTests
{
    [Fact]
    public async Task An_empty_folder_says_what_to_do()
    {
        await using var app = await TestApp.StartAsync();

        var page = await app.PageAsync("/cars");

        Assert.Equal("No car is described yet. Describe one.", page.QuerySelector(".empty")!.TextContent.Trim());
    }

    [Fact]
    public async Task Cars_say_what_their_mixture_does_and_faulty_files_are_not_hidden()
    {
        await using var app = await TestApp.StartAsync("tern-2800", "osprey-v8", "gannet-1500", "faulty");

        var page = await app.PageAsync("/cars");
        var rows = page.QuerySelectorAll(".row");

        Assert.Equal(4, rows.Length);
        Assert.Contains("Larkfield Osprey V8", rows[1].TextContent, StringComparison.Ordinal);
        Assert.Contains("8 barrels", rows[1].TextContent, StringComparison.Ordinal);
        Assert.Contains("Cannot be read", rows[3].TextContent, StringComparison.Ordinal);
        Assert.True(rows[3].QuerySelectorAll(".faults li").Length > 5);
    }

    [Fact]
    public async Task A_pasted_document_with_faults_comes_back_whole_with_all_of_them()
    {
        await using var app = await TestApp.StartAsync();
        var text = Repository.Sample("faulty");

        using var answer = await app.PostFormAsync("/cars/new", "/cars", ("document", text));
        var page = await TestApp.ParseAsync(answer);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Equal(text.ReplaceLineEndings("\n").Trim(), page.QuerySelector("textarea")!.TextContent.ReplaceLineEndings("\n").Trim());
        Assert.True(page.QuerySelectorAll(".faults li").Length > 5);
        Assert.Empty(app.Shelf.List());
    }

    [Fact]
    public async Task A_sample_is_taken_in_and_a_second_one_of_the_same_name_stands_beside_it()
    {
        await using var app = await TestApp.StartAsync();

        using var first = await app.PostFormAsync("/cars/new", "/cars", ("document", Repository.Sample("gannet-1500")));
        using var second = await app.PostFormAsync("/cars/new", "/cars", ("document", Repository.Sample("gannet-1500")));

        Assert.Equal("/cars/samphire-gannet-1500/mixture", first.Headers.Location!.OriginalString);
        Assert.Equal("/cars/samphire-gannet-1500-2/mixture", second.Headers.Location!.OriginalString);
    }

    [Fact]
    public async Task A_form_from_elsewhere_changes_nothing()
    {
        await using var app = await TestApp.StartAsync("gannet-1500");
        using var request = new HttpRequestMessage(HttpMethod.Post, "/cars/gannet-1500/remove")
        {
            Content = new FormUrlEncodedContent([new("back", "/")]),
        };

        using var answer = await app.SendAsync(request);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal(Repository.Sample("gannet-1500"), app.Document("gannet-1500"));
    }

    [Fact]
    public async Task A_car_taken_off_comes_back_by_undo()
    {
        await using var app = await TestApp.StartAsync("gannet-1500");

        using var removed = await app.PostFormAsync("/cars/gannet-1500", "/cars/gannet-1500/remove");
        var home = await app.PageAsync(removed.Headers.Location!.OriginalString);
        using var undone = await app.PostFormAsync(removed.Headers.Location.OriginalString, "/cars/gannet-1500/undo");

        Assert.Contains("Taken off", home.QuerySelector(".notice")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Redirect, undone.StatusCode);
        Assert.Contains("Samphire Gannet 1500", (await app.PageAsync("/cars")).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_document_that_cannot_be_read_can_be_mended_in_place()
    {
        await using var app = await TestApp.StartAsync("faulty");

        using var answer = await app.PostFormAsync("/cars/faulty", "/cars/faulty/document", ("document", Repository.Sample("gannet-1500")));

        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Equal("Samphire Gannet 1500", (await app.PageAsync("/cars/faulty")).QuerySelector("h1")!.TextContent);
    }
}
