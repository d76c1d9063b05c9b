using Microsoft.Playwright;
using Tickover.Workshop.Cars;
using static Microsoft.Playwright.Assertions;

namespace Tickover.Browser.Tests;

/// <summary>Cars come in, are written down, and go.</summary>
/// <param name="workshop">The app and the browser.</param>
[Collection(typeof(OneBrowser))]
public sealed class CarsTests(Workshop workshop)
{
    private static readonly (int, int) Desk = (1280, 800);
    private static readonly (int, int) Phone = (390, 844);

    [Fact]
    public async Task A_car_is_taken_in_from_a_sample_taken_off_the_list_and_brought_back()
    {
        await using var window = await workshop.OpenAsync(Phone);
        var page = await window.GoAsync("/cars");
        var rows = await page.Locator(".row").CountAsync();

        await page.GetByRole(AriaRole.Link, new() { Name = "Describe a car" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Start from this: Larkfield Tern 2800" }).ClickAsync();
        await Expect(page.Locator("#map svg:visible")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Description" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take it off the list" }).ClickAsync();
        await Expect(page.Locator(".row")).ToHaveCountAsync(rows);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await page.GotoAsync("/cars");

        await Expect(page.Locator(".row")).ToHaveCountAsync(rows + 1);
        Assert.True(workshop.Shelf.Remove(CarId.Read("larkfield-tern-2800")!));
    }

    [Fact]
    public async Task A_document_with_faults_is_kept_in_the_box_until_it_is_mended()
    {
        await using var window = await workshop.OpenAsync(Desk);
        var page = await window.GoAsync("/cars/new");
        var good = await File.ReadAllTextAsync(Path.Combine(Repository.Samples, "gannet-1500.car.json"));
        var bad = good.Replace("\"bore\": \"", "\"bore\": \"-", StringComparison.Ordinal);

        await page.Locator("#document").FillAsync(bad);
        await page.GetByRole(AriaRole.Button, new() { Name = "Take it in" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("One thing is wrong with the document");
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("engine.bore");
        await Expect(page.Locator("#document")).ToHaveValueAsync(bad.ReplaceLineEndings("\n"));
        await page.Locator("#document").FillAsync(good.Replace("\"name\": \"", "\"name\": \"Pasted ", StringComparison.Ordinal));
        await page.GetByRole(AriaRole.Button, new() { Name = "Take it in" }).ClickAsync();

        await Expect(page.Locator("h1")).ToContainTextAsync("Pasted");
        var pasted = Assert.Single(workshop.Shelf.List(), c => c.Id.Text.StartsWith("pasted", StringComparison.Ordinal));
        workshop.Shelf.Remove(pasted.Id);
    }

    [Fact]
    public async Task A_wrong_figure_is_told_beside_its_field_and_nothing_is_kept()
    {
        await using var window = await workshop.OpenAsync(Phone);
        var tern = CarId.Read("tern-2800")!;
        var before = workshop.Shelf.Read(tern)!.Document;
        var page = await window.GoAsync("/cars/tern-2800#f-barrel-choke");
        var field = page.Locator("input[name='barrel.choke']");
        var fitted = await field.InputValueAsync();

        foreach (var wrong in new[] { "wide", "-3 mm", "99 mm", "3 furlongs" })
        {
            await field.FillAsync(wrong);
            await page.GetByRole(AriaRole.Button, new() { Name = "Keep the figures" }).ClickAsync();
            await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("One figure is wrong");
            await Expect(field).ToHaveValueAsync(wrong);
            await Expect(page.Locator(".field.faulty .wrong")).ToBeVisibleAsync();
        }

        Assert.Equal(before, workshop.Shelf.Read(tern)!.Document, StringComparer.Ordinal);
        await field.FillAsync("30,5 mm");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the figures" }).ClickAsync();
        await Expect(page.Locator(".notice")).ToContainTextAsync("Kept: one figure.");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.Locator("input[name='barrel.choke']")).ToHaveValueAsync(fitted);
        Assert.Equal(before, workshop.Shelf.Read(tern)!.Document, StringComparer.Ordinal);
    }

    [Fact]
    public async Task The_table_holds_what_the_map_shows()
    {
        await using var window = await workshop.OpenAsync(Desk);
        var page = await window.GoAsync("/cars/osprey-v8/mixture?part=idleJet&value=57&show=difference");

        await page.GetByRole(AriaRole.Link, new() { Name = "The map as a table" }).ClickAsync();

        await Expect(page.Locator("h2").First).ToContainTextAsync("trial less fitted");
        await Expect(page.Locator("table.figures tbody tr")).ToHaveCountAsync(16);
        await Expect(page.Locator("table.figures thead th")).ToHaveCountAsync(25);
        await page.GetByRole(AriaRole.Link, new() { Name = "Mixture" }).ClickAsync();
        await Expect(page.Locator("#map svg.difference-picture:visible")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task The_checks_open_chapter_by_chapter_with_source_and_both_figures()
    {
        await using var window = await workshop.OpenAsync(Phone);
        var page = await window.GoAsync("/");

        await page.GetByRole(AriaRole.Link, new() { Name = "Checks against the outside" }).ClickAsync();
        var chapter = page.Locator("details.chapter").First;
        await Expect(chapter.Locator("tbody tr").First).Not.ToBeVisibleAsync();
        await chapter.Locator("summary").ClickAsync();

        await Expect(chapter.Locator("tbody tr").First).ToBeVisibleAsync();
        await Expect(chapter.Locator("tbody tr").First.Locator("td")).ToHaveCountAsync(7);
    }
}
