using Microsoft.Playwright;

namespace Tickover.Browser.Tests;

/// <summary>What holds on every page, at a desk and on a phone.</summary>
/// <param name="workshop">The app and the browser.</param>
[Collection(typeof(OneBrowser))]
public sealed class EveryPageTests(Workshop workshop)
{
    private static readonly (int, int) Desk = (1280, 800);
    private static readonly (int, int) Phone = (390, 844);

    private static readonly string[] Themes = ["paper", "evening", "daylight"];

    private static readonly string[] Addresses =
    [
        "/", "{tern}", "{tern}/balance?measure=idleAirflow", "{gannet}/arrival", "{tern}/hand-over", "{tern}/findings", "{tern}/findings/new",
        "{gannet}/gates/bay-ready", "{gannet}/cautions/draining", "{tern}/brief", "{tern}/papers", "{tern}/journal", "/cars/larkfield-tern-2800/history",
        "/find?q=hose", "/workshop", "/workshop/people", "/workshop/instruments", "/workshop/authorities", "/shelf", "{tern}/road-logs",
        "{osprey}/balance/rounds", "{osprey}/worksheets/plan", "/practice", "/practice/osprey-v8/1/7?acts=r.r%3A1500", "/visits/new", "/tablets", "/cars",
        "/cars/new", "/cars/osprey-v8", "/cars/gannet-1500?barrel=2", "/cars/osprey-v8/document", "/cars/osprey-v8/mixture",
        "/cars/gannet-1500/mixture?rpm=2500&throttle=30", "/cars/tern-2800/mixture?part=idleJet&value=45&show=difference", "/cars/osprey-v8/mixture/table",
        "/cars/osprey-v8/jets?part=idleJet&value=57", "/supply", "/supply/tern?case=hot&part=filter", "{tern}/worksheets/supply", "/linkages/osprey?down=40",
        "/gauges/tern", "/walls/tern", "/leaks/tern", "{tern}/storage", "{tern}/strip-down/set", "{tern}/strip-down/cards/2", "/tanks",
        "/tanks/tern?litres=20&nose=-10&left=12",
        "{tern}/storage/outline?view=rear&corners=0_0_25~420_0_40~420_300~0_260&depth=500&stated=60", "/faults?find=floods&choose=1",
        "/faults?s=flat-spot-stab&out=linkage-slack&a=watch-shots:both-weak",
        "{tern}/faults", "/checks", "/physics/metering", "/no/such/page", "/bench", "/strip-down", "/levels/tern", "/wear/tern", "{tern}/worksheets/build",
    ];

    // Laid out as others of the list are; looked at with --full only.
    private static readonly string[] Alike =
    [
        "/practice/wigeon/0/3?acts=r", "/cars/faulty", "/cars/osprey-v8/jets", "/cars/osprey-v8/jets?part=choke&value=99+mm",
        "/cars/osprey-v8/mixture?rpm=0", "/supply-document", "/linkages/tern?down=80&set=1", "/linkages/nothing", "/linkage-document", "/gauge-document",
        "/tank-document", "/level-document", "/wear-document", "/build-document", "/car-document", "/fault-finder-explained", "/physics",
        "{tern}/worksheets/jets", "/linkages", "/walls", "/gauges", "/tanks/outline?corners=0_0~300_250~300_0~0_250&depth=200",
    ];

    // Every page in one theme at a desk and on a phone, axe at one of the two; --full has axe at both, in two themes. The style
    // sheet is one, and its pairs of colours are the same on all pages.
    public static TheoryData<string, string> OnBoth => Paired(Addresses, 0);

    public static TheoryData<string, string> OnADesk => Paired([.. Addresses, .. Alike], 0);

    public static TheoryData<string, string> OnAPhone => Paired([.. Addresses, .. Alike], 1);

    [Theory]
    [MemberData(nameof(OnBoth))]
    public async Task Fits_a_desk_and_a_phone_reads_at_twice_the_size_and_has_no_barrier_that_axe_knows_of(string address, string theme)
    {
        await using var window = await workshop.OpenAsync(Desk, theme);
        var page = await window.GoAsync(workshop.Filled(address));
        var axeAtDesk = Array.IndexOf(Addresses, address) % 2 == 0;

        await (axeAtDesk ? PageChecks.IsGoodAsync(page) : PageChecks.FitsAsync(page));
        await ReadsAtTwiceTheSizeAsync(page);
        await page.SetViewportSizeAsync(Phone.Item1, Phone.Item2);
        await (axeAtDesk ? PageChecks.FitsAsync(page) : PageChecks.IsGoodAsync(page));
    }

    [Theory]
    [Trait("Speed", "slow")]
    [MemberData(nameof(OnADesk))]
    public Task Is_good_at_a_desk(string address, string theme) => IsGoodAsync(address, theme, Desk);

    [Theory]
    [Trait("Speed", "slow")]
    [MemberData(nameof(OnAPhone))]
    public Task Is_good_on_a_phone(string address, string theme) => IsGoodAsync(address, theme, Phone);

    [Fact]
    [Trait("Speed", "slow")]
    public async Task A_choice_of_jets_fits_a_desk_and_a_phone()
    {
        await using (var window = await workshop.OpenAsync(Desk, "paper"))
        {
            await window.ChooseJetsAsync(workshop.Filled("{osprey}/road-logs"));
        }

        await IsGoodAsync("{osprey}/road-logs", "paper", Desk);
        await IsGoodAsync("{osprey}/road-logs/trial-card", "daylight", Phone);
    }

    // What lies between phone and desk: a tablet upright, and one lying.
    [Theory]
    [Trait("Speed", "slow")]
    [InlineData("/cars/osprey-v8/mixture", 820)]
    [InlineData("/cars/osprey-v8/mixture", 1024)]
    [InlineData("/cars/osprey-v8/jets?part=idleJet&value=57", 820)]
    [InlineData("/cars/osprey-v8/jets?part=idleJet&value=57", 1024)]
    [InlineData("/cars/osprey-v8", 1180)]
    public Task Fits_a_tablet(string address, int width) => FitsAsync(address, "paper", (width, 800));

    private static TheoryData<string, string> Paired(string[] addresses, int first)
    {
        var pairs = new TheoryData<string, string>();
        for (var k = 0; k < addresses.Length; k++)
        {
            pairs.Add(addresses[k], Themes[(k + first) % Themes.Length]);
        }

        return pairs;
    }

    private async Task IsGoodAsync(string address, string theme, (int, int) size)
    {
        await using var window = await workshop.OpenAsync(size, theme);
        var page = await window.GoAsync(workshop.Filled(address));

        await PageChecks.IsGoodAsync(page);
        await ReadsAtTwiceTheSizeAsync(page);
    }

    // A window of 640 px is what a desk of 1280 px shows at 200 %.
    private static async Task ReadsAtTwiceTheSizeAsync(IPage page)
    {
        await page.SetViewportSizeAsync(640, 400);
        Assert.Equal(0, await PageMeasures.OverflowAsync(page));
    }

    private async Task FitsAsync(string address, string theme, (int, int) size)
    {
        await using var window = await workshop.OpenAsync(size, theme);

        await PageChecks.FitsAsync(await window.GoAsync(workshop.Filled(address)));
    }
}
