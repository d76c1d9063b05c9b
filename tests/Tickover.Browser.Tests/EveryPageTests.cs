using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Tickover.Browser.Tests;

/// <summary>What holds on every page, at a desk and on a phone.</summary>
/// <param name="workshop">The app and the browser.</param>
[Collection(typeof(OneBrowser))]
public sealed class EveryPageTests(Workshop workshop)
{
    private static readonly (int, int) Desk = (1280, 800);
    private static readonly (int, int) Phone = (390, 844);

    private static readonly string[] Addresses =
    [
        "/", "/cars/new", "/cars/osprey-v8", "/cars/gannet-1500?barrel=2", "/cars/faulty", "/cars/osprey-v8/mixture", "/cars/gannet-1500/mixture?rpm=2500&throttle=30",
        "/cars/tern-2800/mixture?part=idleJet&value=45&show=difference", "/cars/osprey-v8/mixture/table", "/cars/osprey-v8/jets", "/cars/osprey-v8/jets?part=idleJet&value=60",
        "/cars/osprey-v8/jets?part=choke&value=99+mm", "/cars/osprey-v8/mixture?rpm=0", "/checks", "/physics", "/no/such/page",
    ];

    public static TheoryData<string> All => [.. Addresses];

    public static MatrixTheoryData<string, string> AllInEveryTheme => new(Addresses, ["paper", "evening", "daylight"]);

    [Theory]
    [MemberData(nameof(All))]
    public Task Fits_a_desk(string address) => FitsAsync(address, Desk);

    [Theory]
    [MemberData(nameof(All))]
    public Task Fits_a_phone(string address) => FitsAsync(address, Phone);

    [Theory]
    [MemberData(nameof(All))]
    public async Task Reads_at_twice_the_size(string address)
    {
        // A window of 640 px is what a desk of 1280 px shows at 200 %.
        await using var window = await workshop.OpenAsync((640, 400));

        Assert.Equal(0, await PageMeasures.OverflowAsync(await window.GoAsync(address)));
    }

    [Theory]
    [MemberData(nameof(AllInEveryTheme))]
    public async Task Has_no_barrier_that_axe_knows_of(string address, string theme)
    {
        await using var window = await workshop.OpenAsync(Desk, theme);
        var page = await window.GoAsync(address);

        Assert.Empty(await ViolationsAsync(page));
    }

    [Theory]
    [InlineData("/cars/osprey-v8/mixture", "paper")]
    [InlineData("/cars/osprey-v8/jets?part=idleJet&value=60", "evening")]
    [InlineData("/cars/osprey-v8", "daylight")]
    public async Task Has_no_barrier_on_a_phone(string address, string theme)
    {
        await using var window = await workshop.OpenAsync(Phone, theme);
        var page = await window.GoAsync(address);

        Assert.Empty(await ViolationsAsync(page));
    }

    private static async Task<IEnumerable<string>> ViolationsAsync(IPage page)
    {
        // Contrast of 7:1 is asked for beside what axe takes as its usual rules.
        var options = new AxeRunOptions { Rules = new Dictionary<string, RuleOptions>(StringComparer.Ordinal) { ["color-contrast-enhanced"] = new() { Enabled = true } } };
        var result = await page.RunAxe(options);
        return result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Select(n => n.Html[..Math.Min(100, n.Html.Length)]).Take(3))}");
    }

    private async Task FitsAsync(string address, (int, int) size)
    {
        await using var window = await workshop.OpenAsync(size);
        var page = await window.GoAsync(address);

        Assert.Equal(0, await PageMeasures.OverflowAsync(page));
        Assert.Equal([], await PageMeasures.SmallTargetsAsync(page));
        Assert.Equal([], await PageMeasures.SmallTextsAsync(page));
    }
}
