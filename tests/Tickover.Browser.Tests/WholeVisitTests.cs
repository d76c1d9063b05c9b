using Microsoft.Playwright;
using Tickover.Workshop.Visits;
using static Microsoft.Playwright.Assertions;

namespace Tickover.Browser.Tests;

/// <summary>One person takes a car from arrival to its account, and finds it again.</summary>
/// <param name="workshop">The app and the browser.</param>
[Collection(typeof(OneBrowser))]
public sealed class WholeVisitTests(Workshop workshop)
{
    private const string Pin = "2468";

    [Theory]
    [InlineData(Scripts.On)]
    [InlineData(Scripts.Off)]
    public async Task A_car_is_taken_in_worked_on_handed_back_and_found_again(Scripts scripts)
    {
        var signer = await SignerAsync();
        await using var window = await workshop.OpenAsync((1280, 800), scripts: scripts);
        var page = await window.GoAsync("/visits/new");
        var name = $"Marram Six, {scripts}";
        await page.Locator("[name=carName]").First.FillAsync(name);
        await page.Locator("[name=complaint]").FillAsync("She will not idle.");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take it in" }).ClickAsync();
        await Expect(page.Locator("h1")).ToContainTextAsync(name);
        var visit = new Uri(page.Url).AbsolutePath;

        await SignEveryCheckAsync(page, $"{visit}/gates/bay-ready", signer);
        await Expect(page.Locator(".box.y")).ToHaveCountAsync(5);

        await page.GotoAsync($"{visit}/supply?measure=fuelPressure");
        await page.Locator("#entry input[id^='v-']").First.FillAsync("0,24");
        await page.Locator("#entry").GetByRole(AriaRole.Button, new() { Name = "Keep", Exact = true }).First.ClickAsync();
        await Expect(page.Locator("#entry .kept")).ToContainTextAsync("0.24");

        await page.GotoAsync($"{visit}/findings/new");
        await page.Locator("#what").FillAsync("Cross-pipe <b>perished</b>");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the finding" }).ClickAsync();
        await FoundAsync(page, visit, "Cross-pipe <b>perished</b>");

        await page.GotoAsync($"{visit}/account");
        await Expect(page.Locator("body")).ToContainTextAsync("Cross-pipe <b>perished</b>");
        await Expect(page.Locator("body")).ToContainTextAsync("She will not idle.");
        var paper = await page.APIRequest.GetAsync($"{visit}/account.pdf");
        Assert.Equal("%PDF", System.Text.Encoding.ASCII.GetString((await paper.BodyAsync())[..4]));

        await page.GotoAsync($"{visit}/hand-over");
        await page.Locator("summary", new() { HasText = "The car goes home" }).ClickAsync();
        await page.Locator("#odometerOut").FillAsync("48262");
        await page.GetByRole(AriaRole.Button, new() { Name = "Close the visit" }).ClickAsync();
        await Expect(page.GetByText("Went home on")).ToBeVisibleAsync();
        await page.GotoAsync($"/find?q={Uri.EscapeDataString(name)}");
        await Expect(page.Locator("main")).ToContainTextAsync(name);
    }

    private static async Task SignEveryCheckAsync(IPage page, string gate, Person signer)
    {
        for (var k = 0; k < 5; k++)
        {
            await page.GotoAsync(gate);
            await page.Locator("#seen").FillAsync("Seen and right.");
            await page.Locator("#sign-person").SelectOptionAsync(signer.Id.ToString());
            await page.Locator("#sign-pin").FillAsync(Pin);
            await page.GetByRole(AriaRole.Button, new() { Name = "Sign this check" }).ClickAsync();
            await Expect(page.Locator(".box.y")).ToHaveCountAsync(k + 1);
        }
    }

    // The page is left once it shows the finding kept: one that is left earlier takes its own way there.
    private static async Task FoundAsync(IPage page, string visit, string words)
    {
        await page.WaitForURLAsync(url => url.Contains($"{visit}/findings/", StringComparison.Ordinal) && !url.EndsWith("/new", StringComparison.Ordinal));
        await page.GotoAsync($"{visit}/findings");
        var lines = page.Locator(".finding .t");
        await Expect(lines.First).ToHaveTextAsync(words);
    }

    private async Task<Person> SignerAsync()
    {
        var person = (await workshop.Record.WorkshopAsync()).People[0];
        if (!await workshop.Pins.HasPinAsync(person.Id))
        {
            Assert.Null(await workshop.Pins.SetAsync(person.Id, Pin, null));
        }

        return person;
    }
}
