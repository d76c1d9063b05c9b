namespace Tickover.Browser.Tests;

/// <summary>Takes the pictures of the README: only with TICKOVER_UPDATE=1, as with all that is written from the product.</summary>
/// <param name="workshop">The app and the browser.</param>
[Collection(typeof(OneBrowser))]
public sealed class PicturesTests(Workshop workshop)
{
    private const string Switch = "TICKOVER_UPDATE";
    private const string Folder = "docs/pictures";

    // a V8 whose fault was found and put right, its rods off, at its first turn
    private const string Practice = "/practice/osprey-v8/1/7?acts=r.r:1500.r:1500.r:2500.f:twistedSpindle_barrel_8.r.r:1500.r:2500.f:bankTiming_bank_2.l:stop:3.l:stop:4.o.r";

    // The form keeps its button at the foot of the window, which a picture of the whole page would put in its middle.
    private static readonly string[] WindowOnly = ["description", "stage", "account", "road-logs", "road-logs-phone", "rounds", "practice", "practice-phone", "linkage", "linkage-phone", "gauge", "supply", "set"];

    private static readonly (int, int) Desk = (1280, 800);
    private static readonly (int, int) Phone = (390, 844);

    public static TheoryData<string, string, bool, string> All => new()
    {
        { "shop", "/", false, "paper" },
        { "visit", "{tern}", false, "paper" },
        { "stage", "{tern}/balance?measure=idleAirflow", false, "paper" },
        { "visit-phone", "{gannet}", true, "evening" },
        { "caution", "{gannet}/cautions/draining", false, "paper" },
        { "account", "{tern}/account", false, "paper" },
        { "mixture", "/cars/osprey-v8/mixture?rpm=2750&throttle=11", false, "paper" },
        { "jets", "/cars/osprey-v8/jets?rpm=2750&throttle=11&part=idleJet&value=60", false, "paper" },
        { "description", "/cars/osprey-v8", false, "paper" },
        { "mixture-phone", "/cars/osprey-v8/mixture?rpm=2750&throttle=11", true, "paper" },
        { "road-logs", "{osprey}/road-logs", false, "paper" },
        { "trial-card", "{osprey}/road-logs/trial-card", false, "paper" },
        { "road-logs-phone", "{osprey}/road-logs", true, "paper" },
        { "rounds", "{tern}/balance/rounds", false, "paper" },
        { "practice", Practice, false, "paper" },
        { "practice-phone", Practice, true, "paper" },
        { "linkage", "/linkages/osprey?down=25", false, "paper" },
        { "linkage-phone", "/linkages/tern?down=25", true, "evening" },
        { "gauge", "/gauges/tern", false, "paper" },
        { "supply", "/supply/tern", false, "paper" },
        { "set", "{tern}/strip-down/set", false, "paper" },
        { "evening", "/cars/tern-2800/mixture?rpm=2750&throttle=11", false, "evening" },
    };

    [Theory]
    [MemberData(nameof(All))]
    public async Task Writes_a_picture_of(string name, string address, bool phone, string theme)
    {
        Assert.SkipUnless(Environment.GetEnvironmentVariable(Switch) is "1", $"Set {Switch}=1 to write the pictures of the README.");
        await using var window = await workshop.OpenAsync(phone ? Phone : Desk, theme);
        if (address.Contains("road-logs", StringComparison.Ordinal))
        {
            await window.ChooseJetsAsync(workshop.Filled("{osprey}/road-logs"));
        }

        var page = await window.GoAsync(workshop.Filled(address));
        var path = Path.Combine(Repository.Root, Folder, name + ".png");

        var picture = await page.ScreenshotAsync(new() { Path = path, FullPage = !WindowOnly.Contains(name, StringComparer.Ordinal) });

        Assert.NotEmpty(picture);
    }
}
