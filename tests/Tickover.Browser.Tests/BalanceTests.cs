using System.Globalization;
using Microsoft.Playwright;
using Tickover.Workshop.Visits;
using static Microsoft.Playwright.Assertions;

namespace Tickover.Browser.Tests;

/// <summary>A round of eight barrels by keypad alone, the Wi-Fi gone half way, and the turn that follows.</summary>
/// <param name="workshop">The app and the browser.</param>
[Collection(typeof(OneBrowser))]
public sealed class BalanceTests(Workshop workshop)
{
    private static readonly string[] Idle = ["4.1", "4.2", "4.0", "4.1", "3.2", "4.2", "4.0", "4.1", "4.1"];

    [Fact]
    public async Task A_round_is_keyed_in_with_one_hand_though_the_wifi_drops_and_every_reading_arrives_once_in_order()
    {
        var (address, visit) = await VisitAsync();
        // A context of its own: a browser that is offline tells its console so.
        await using var context = await workshop.Browser.NewContextAsync(new BrowserNewContextOptions { BaseURL = workshop.Address, ViewportSize = new ViewportSize { Width = 1280, Height = 800 }, ReducedMotion = ReducedMotion.Reduce });
        var page = await context.NewPageAsync();
        await page.GotoAsync($"{address}/balance/rounds");
        await page.EvaluateAsync("() => { window.same = true; window.taps = 0; addEventListener('click', () => window.taps++); }");

        for (var k = 0; k < Idle.Length; k++)
        {
            var barrel = k < 8 ? k + 1 : 1;
            await Expect(page.Locator("[data-pad-title]")).ToHaveTextAsync(string.Create(CultureInfo.InvariantCulture, $"Barrel {barrel}{(k == 8 ? " again" : "")} reads"));
            if (k == 0)
            {
                await page.Locator(".keypad [data-key=other]").ClickAsync();
                await TapAsync(page, "920");
                await page.Locator(".keypad [data-key=other]").ClickAsync();
            }

            if (k == 3)
            {
                await context.SetOfflineAsync(true);
            }

            await TapAsync(page, Idle[k]);
            await page.Locator(".keypad [data-key=keep]").ClickAsync();
        }

        await Expect(page.Locator("[data-pad-title]")).ToContainTextAsync("Round read");
        await Expect(page.Locator("#tray")).ToContainTextAsync("kept here");
        Assert.Equal("3.2", await page.Locator("[data-part='barrel:5'] text").Nth(1).TextContentAsync(), StringComparer.Ordinal);
        await context.SetOfflineAsync(false);
        await Expect(page.Locator("#tray")).ToHaveTextAsync("All sent");
        await Expect(page.Locator("#next-move .what")).Not.ToContainTextAsync("Read barrel");

        var readings = (await workshop.Record.VisitAsync(visit))!.Readings;
        Assert.Equal(Idle, readings.Select(r => r.Typed.Split(' ')[0]), StringComparer.Ordinal);
        Assert.All(readings, r => Assert.Equal(920, r.EngineSpeedRpm));
        Assert.Single(readings.Select(r => r.Round).Distinct());
        Assert.True(await page.EvaluateAsync<bool>("() => window.same === true"));
        // 9 readings of three digits with Keep, and the speed once: what one hand has to press
        Assert.InRange(await page.EvaluateAsync<int>("() => window.taps"), 30, 45);
    }

    private static async Task TapAsync(IPage page, string figure)
    {
        foreach (var digit in figure)
        {
            await page.Locator($".keypad [data-key={(digit == '.' ? "point" : $"\"{digit}\"")}]").ClickAsync();
        }
    }

    private async Task<(string Address, Id<Visit> Visit)> VisitAsync()
    {
        var people = await workshop.Record.AllAsync<Person>();
        var car = new CustomerCar { Name = "Larkfield Osprey V8 of the rounds", Slug = "osprey-rounds" };
        var visit = new Visit { Car = car.Id, ArrivedOn = DateOnly.FromDateTime(DateTime.Now), Complaint = "Balance only." };
        var document = await File.ReadAllTextAsync(Path.Combine(Repository.Samples, "osprey-v8.car.json"));
        IReadOnlyList<RecordItem> items =
        [
            car, visit, new CarDescription { Car = car.Id, Since = visit.ArrivedOn, Document = document },
            .. new[] { Gate.BayReady, Gate.EngineMayRun, Gate.FitToTune }.Select(g => new SignOff { Visit = visit.Id, Gate = g, Person = people[0].Id, On = visit.ArrivedOn, Override = "for the test" }),
        ];
        Assert.True((await workshop.Record.KeepAsync(new Act { Key = Guid.NewGuid(), Items = items, Words = "a car to balance", Visit = visit.Id })).IsKept);
        return ($"/visits/{visit.Id}", visit.Id);
    }
}
