using System.Net;
using Microsoft.Extensions.DependencyInjection;
using Tickover.Web.Lan;

namespace Tickover.Web.Tests.Lan;

/// <summary>Items are of OWASP ASVS 5.0, chapters V3, V6 and V7, as its repository has them.</summary>
public sealed class PairingTests
{
    // 6.5.1: usable once. 3.3.1 to 3.3.4: attributes of the cookie. 7.2.3: at least 128 bits.
    [Fact]
    public async Task A_tablet_with_the_code_is_let_in_and_the_code_is_used_up()
    {
        await using var app = await LanApp.StartAsync();
        var code = await app.CodeAsync();
        using var first = app.Visitor("192.168.7.20");
        using var second = app.Visitor("192.168.7.21");

        using var paired = await first.PairAsync("Bench tablet", code);
        var cookie = Assert.Single(first.LastSet, c => c.StartsWith("__Host-tickover-device=", StringComparison.Ordinal));
        using var again = await second.PairAsync("Other tablet", code);

        Assert.Equal(HttpStatusCode.OK, await first.StatusAsync("/physics"));
        Assert.Equal(HttpStatusCode.Forbidden, again.StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, await second.StatusAsync("/physics"));
        Assert.Equal(43, first.Token.Length);
        Assert.All(["secure", "httponly", "samesite=strict", "path=/"], part => Assert.Contains(part, cookie, StringComparison.Ordinal));
    }

    // 6.6.3: brute force of codes is stopped.
    [Fact]
    public async Task After_five_wrong_codes_an_address_is_not_let_in_even_with_the_right_one()
    {
        await using var app = await LanApp.StartAsync();
        var code = await app.CodeAsync();
        using var guesser = app.Visitor("192.168.7.66");
        using var other = app.Visitor("192.168.7.20");

        for (var i = 0; i < PairingCodes.TriesOfOne; i++)
        {
            using var wrong = await guesser.PairAsync("Guess", Wrong(code, i));
            Assert.Equal(HttpStatusCode.Forbidden, wrong.StatusCode);
        }

        using var right = await guesser.PairAsync("Guess", code);
        using var elsewhere = await other.PairAsync("Bench tablet", code);

        Assert.Equal(HttpStatusCode.TooManyRequests, right.StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, await guesser.StatusAsync("/physics"));
        Assert.Equal(HttpStatusCode.Redirect, elsewhere.StatusCode);
    }

    // 6.6.3, from many addresses.
    [Fact]
    public void After_twenty_wrong_codes_in_all_the_code_is_dead_for_everybody()
    {
        var codes = new PairingCodes(new Clock());
        var code = codes.Make();

        for (var i = 0; i < PairingCodes.TriesOfAll; i++)
        {
            Assert.Equal(PairingOutcome.Wrong, codes.Take(Wrong(code, i), IPAddress.Parse($"192.168.7.{100 + (i / 4)}")));
        }

        Assert.Equal(PairingOutcome.NoCode, codes.Take(code, IPAddress.Parse("192.168.7.20")));
        Assert.Equal(PairingOutcome.Good, codes.Take(codes.Make(), IPAddress.Parse("192.168.7.20")));
    }

    // 6.5.5: ten minutes at most.
    [Fact]
    public void A_code_is_good_for_ten_minutes()
    {
        var clock = new Clock();
        var codes = new PairingCodes(clock);
        var first = codes.Make();
        clock.Pass(TimeSpan.FromMinutes(10) - TimeSpan.FromSeconds(1));
        Assert.Equal(PairingOutcome.Good, codes.Take(first, IPAddress.Loopback));

        var second = codes.Make();
        clock.Pass(TimeSpan.FromMinutes(10));
        Assert.Equal(PairingOutcome.NoCode, codes.Take(second, IPAddress.Loopback));
    }

    // 6.5.8 in its spirit: no time that somebody can set.
    [Fact]
    public void A_clock_set_back_gives_a_code_no_second_life()
    {
        var clock = new Clock();
        var codes = new PairingCodes(clock);
        var code = codes.Make();
        clock.Pass(TimeSpan.FromMinutes(11));
        clock.Set(-TimeSpan.FromHours(2));

        Assert.Equal(PairingOutcome.NoCode, codes.Take(code, IPAddress.Loopback));
    }

    [Fact]
    public void A_new_code_ends_the_one_before()
    {
        var codes = new PairingCodes(new Clock());
        var first = codes.Make();
        var second = codes.Make();

        Assert.Equal(PairingOutcome.Wrong, codes.Take(first, IPAddress.Loopback));
        Assert.Equal(PairingOutcome.Good, codes.Take(second, IPAddress.Loopback));
    }

    // 6.5.4: entropy; 40 bits here. 6.5.3: from the system's generator. What looks alike is read alike.
    [Theory]
    [InlineData("0123 4567", "01234567")]
    [InlineData("oiL2-3abc", "01123ABC")]
    [InlineData("0123456", null)]
    [InlineData("012345678", null)]
    [InlineData("0123456U", null)]
    [InlineData("", null)]
    [InlineData(null, null)]
    public void A_code_is_read_as_people_type_it(string? typed, string? expected) => Assert.Equal(expected, PairingCode.Read(typed));

    [Fact]
    public void Codes_are_of_eight_signs_and_do_not_come_twice()
    {
        var codes = Enumerable.Range(0, 2000).Select(_ => PairingCode.Make()).ToList();

        Assert.All(codes, c => Assert.Equal(c, PairingCode.Read(c)));
        Assert.Equal(codes.Count, codes.Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(32, codes.SelectMany(c => c).Distinct().Count());
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("A name that is much longer than anybody would call a tablet")]
    [InlineData("Bench\u202Etablet")]
    public async Task A_tablet_needs_a_name_and_the_code_is_not_spent_on_a_bad_one(string name)
    {
        await using var app = await LanApp.StartAsync();
        var code = await app.CodeAsync();
        using var tablet = app.Visitor("192.168.7.20");

        using var refused = await tablet.PairAsync(name, code);
        using var taken = await tablet.PairAsync("Bench tablet", code);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, taken.StatusCode);
    }

    [Fact]
    public async Task Two_tablets_of_one_name_are_told_apart_and_markup_stays_text()
    {
        await using var app = await LanApp.StartAsync();
        using var first = await app.PairedAsync("<b>Bench</b>");
        using var second = await app.PairedAsync("<b>Bench</b>");
        using var third = await app.PairedAsync("This machine");
        using var machine = app.Visitor("", "http://localhost");

        using var page = await machine.GetAsync("/tablets");
        var document = await TestApp.ParseAsync(page);

        Assert.Equal(string.Join("|", ["This machine 2", "<b>Bench</b> 2", "<b>Bench</b>"]), string.Join("|", document.QuerySelectorAll("form.sample h3").Select(h => h.TextContent)));
        Assert.Empty(document.QuerySelectorAll("form.sample h3 b"));
    }

    // 7.5.2 and 6.5.6: devices can be seen and taken off; only from the machine itself.
    [Fact]
    public async Task Codes_are_made_and_tablets_taken_off_on_the_machine_only()
    {
        await using var app = await LanApp.StartAsync();
        using var tablet = await app.PairedAsync();

        Assert.Equal(HttpStatusCode.Forbidden, await tablet.StatusAsync("/tablets"));
        using var code = await tablet.SendAsync(new HttpRequestMessage(HttpMethod.Post, "/tablets/code") { Content = new FormUrlEncodedContent([]) });
        using var off = await tablet.SendAsync(new HttpRequestMessage(HttpMethod.Post, "/tablets/off") { Content = new FormUrlEncodedContent([]) });
        Assert.InRange((int)code.StatusCode, 400, 403);
        Assert.InRange((int)off.StatusCode, 400, 403);
        Assert.Single(app.Services.GetRequiredService<DeviceRegister>().List());
    }

    private static string Wrong(string code, int n)
    {
        var wrong = $"WRNG000{n % 10}";
        return string.Equals(PairingCode.Read(code), wrong, StringComparison.Ordinal) ? "WRNGWRNG" : wrong;
    }
}
