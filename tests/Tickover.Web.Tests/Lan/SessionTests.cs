using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Tickover.Web.Lan;

namespace Tickover.Web.Tests.Lan;

/// <summary>Items are of OWASP ASVS 5.0, chapter V7, as its repository has them.</summary>
public sealed class SessionTests
{
    // 7.2.1: verified here, by the server.
    [Theory]
    [InlineData("")]
    [InlineData("AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    [InlineData("\u00e9\u0000")]
    public async Task A_cookie_without_pairing_opens_nothing(string token)
    {
        await using var app = await LanApp.StartAsync();
        using var stranger = app.Visitor("192.168.7.20");
        stranger.Token = Uri.EscapeDataString(token);

        Assert.Equal(HttpStatusCode.Unauthorized, await stranger.StatusAsync("/physics"));
        Assert.Equal(HttpStatusCode.Unauthorized, await stranger.StatusAsync("/api/cars"));
    }

    // 7.4.1 and 7.4.5: ended by the server, for one.
    [Fact]
    public async Task A_tablet_taken_off_is_turned_away_at_once_and_the_others_stay()
    {
        await using var app = await LanApp.StartAsync();
        using var first = await app.PairedAsync("First");
        using var second = await app.PairedAsync("Second");
        using var machine = app.Visitor("", "http://localhost");
        var id = app.Services.GetRequiredService<DeviceRegister>().List().Single(d => d.Name is "First").Id;

        using var off = await machine.PostFormAsync("/tablets", $"/tablets/{id}/off");

        Assert.Equal(HttpStatusCode.Redirect, off.StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, await first.StatusAsync("/physics"));
        Assert.Equal(HttpStatusCode.OK, await second.StatusAsync("/physics"));
    }

    // 7.4.5, for all.
    [Fact]
    public async Task All_tablets_can_be_taken_off_at_once()
    {
        await using var app = await LanApp.StartAsync();
        using var first = await app.PairedAsync("First");
        using var second = await app.PairedAsync("Second");
        using var machine = app.Visitor("", "http://localhost");

        using var off = await machine.PostFormAsync("/tablets", "/tablets/off");

        Assert.Equal(HttpStatusCode.Unauthorized, await first.StatusAsync("/physics"));
        Assert.Equal(HttpStatusCode.Unauthorized, await second.StatusAsync("/physics"));
        Assert.Equal(HttpStatusCode.OK, await machine.StatusAsync("/physics"));
    }

    // 7.4.1: also what is open already.
    [Fact]
    public async Task An_open_stream_is_closed_when_its_tablet_is_taken_off()
    {
        await using var app = await LanApp.StartAsync(map: MapStream);
        using var tablet = await app.PairedAsync();
        var register = app.Services.GetRequiredService<DeviceRegister>();
        using var answer = await tablet.GetAsync("/stream-of-the-test");
        await using var stream = await answer.Content.ReadAsStreamAsync(TestContext.Current.CancellationToken);
        var buffer = new byte[8];
        Assert.Equal(1, await stream.ReadAsync(buffer, TestContext.Current.CancellationToken));

        register.Revoke(register.List().Single().Id);

        using var limit = new CancellationTokenSource(TimeSpan.FromSeconds(10));
        await Assert.ThrowsAnyAsync<IOException>(async () => await stream.ReadExactlyAsync(buffer, limit.Token));
    }

    // 7.4.4: a tablet can leave by itself.
    [Fact]
    public async Task A_tablet_can_take_itself_off()
    {
        await using var app = await LanApp.StartAsync();
        using var tablet = await app.PairedAsync();
        var token = tablet.Token;

        using var left = await tablet.PostFormAsync("/pair", "/pair/leave");
        tablet.Token = token;

        Assert.Equal(HttpStatusCode.Redirect, left.StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, await tablet.StatusAsync("/physics"));
    }

    // 7.3.1: an end after idleness.
    [Fact]
    public async Task A_tablet_not_seen_for_180_days_is_paired_again()
    {
        await using var app = await LanApp.StartAsync();
        using var tablet = await app.PairedAsync();

        app.Clock.Pass(TimeSpan.FromDays(179));
        Assert.Equal(HttpStatusCode.OK, await tablet.StatusAsync("/physics"));
        app.Clock.Pass(TimeSpan.FromDays(179));
        Assert.Equal(HttpStatusCode.OK, await tablet.StatusAsync("/physics"));
        app.Clock.Pass(TimeSpan.FromDays(180));
        Assert.Equal(HttpStatusCode.Unauthorized, await tablet.StatusAsync("/physics"));
    }

    [Fact]
    public async Task A_clock_that_was_ahead_and_is_set_back_does_not_keep_a_tablet_in_for_ever()
    {
        await using var app = await LanApp.StartAsync();
        using var tablet = await app.PairedAsync();
        app.Clock.Pass(TimeSpan.FromDays(170));
        Assert.Equal(HttpStatusCode.OK, await tablet.StatusAsync("/physics"));

        app.Clock.Set(TimeSpan.FromDays(-170));
        Assert.Equal(HttpStatusCode.OK, await tablet.StatusAsync("/physics"));
        app.Clock.Pass(TimeSpan.FromDays(181));

        Assert.Equal(HttpStatusCode.Unauthorized, await tablet.StatusAsync("/physics"));
    }

    // 7.2.4 in its spirit: the token is renewed; the old one dies once the new one is in use.
    [Fact]
    public async Task A_token_is_renewed_and_the_old_one_ends_when_the_new_one_is_used()
    {
        await using var app = await LanApp.StartAsync();
        using var tablet = await app.PairedAsync();
        var old = tablet.Token;
        app.Clock.Pass(TimeSpan.FromDays(8));

        Assert.Equal(HttpStatusCode.OK, await tablet.StatusAsync("/api/cars"));
        Assert.Equal(old, tablet.Token);
        Assert.Equal(HttpStatusCode.OK, await tablet.StatusAsync("/physics", ("Accept", "text/html")));
        var renewed = tablet.Token;
        Assert.NotEqual(old, renewed, StringComparer.Ordinal);

        // The answer may be lost on poor Wi-Fi: until the new one comes back the old one is good.
        tablet.Token = old;
        Assert.Equal(HttpStatusCode.OK, await tablet.StatusAsync("/api/cars"));
        tablet.Token = renewed;
        Assert.Equal(HttpStatusCode.OK, await tablet.StatusAsync("/api/cars"));
        app.Clock.Pass(TimeSpan.FromMinutes(2));
        Assert.Equal(HttpStatusCode.OK, await tablet.StatusAsync("/api/cars"));
        tablet.Token = old;
        Assert.Equal(HttpStatusCode.Unauthorized, await tablet.StatusAsync("/api/cars"));
    }

    // 7.2.2: nothing in the file opens anything.
    [Fact]
    public async Task Only_a_hash_is_kept_and_only_the_owner_reads_the_file()
    {
        await using var app = await LanApp.StartAsync();
        using var tablet = await app.PairedAsync();

        var text = await File.ReadAllTextAsync(app.DevicesFile, TestContext.Current.CancellationToken);

        Assert.DoesNotContain(tablet.Token, text, StringComparison.Ordinal);
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(app.DevicesFile));
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("""{"form":2,"devices":[]}""")]
    [InlineData("""{"form":1,"devices":[null]}""")]
    [InlineData("""{"form":1,"devices":[{"id":"","name":"","tokenHash":""}]}""")]
    public async Task A_damaged_list_lets_nobody_in_says_so_and_is_kept_aside(string damage)
    {
        await using var app = await LanApp.StartAsync();
        using var tablet = await app.PairedAsync();
        await File.WriteAllTextAsync(app.DevicesFile, damage, TestContext.Current.CancellationToken);
        using var machine = app.Visitor("", "http://localhost");

        Assert.Equal(HttpStatusCode.Unauthorized, await tablet.StatusAsync("/physics"));
        using var page = await machine.GetAsync("/tablets");
        var alert = (await TestApp.ParseAsync(page)).QuerySelector("[role=alert]")!.TextContent;
        var aside = Assert.Single(Directory.GetFiles(Path.GetDirectoryName(app.DevicesFile)!, "*.damaged-*"));

        Assert.Contains("could not be read, so no tablet is let in", alert, StringComparison.Ordinal);
        Assert.Contains(Path.GetFileName(aside), alert, StringComparison.Ordinal);
        Assert.Equal(damage, await File.ReadAllTextAsync(aside, TestContext.Current.CancellationToken));
        using var again = await app.PairedAsync("Bench tablet");
        Assert.Equal(HttpStatusCode.OK, await again.StatusAsync("/physics"));
    }

    [Fact]
    public async Task A_restart_keeps_tablets_in()
    {
        var clock = new Clock();
        await using var first = await LanApp.StartAsync(clock: clock);
        using var tablet = await first.PairedAsync();
        await using var second = await LanApp.StartAsync(folder: first.Folder, clock: clock);
        using var same = second.Visitor("192.168.7.20");
        same.Token = tablet.Token;

        Assert.Equal(HttpStatusCode.OK, await same.StatusAsync("/physics"));
    }

    [Fact]
    public async Task Two_servers_on_one_folder_lose_no_tablet_and_take_off_for_both()
    {
        var clock = new Clock();
        await using var first = await LanApp.StartAsync(clock: clock);
        await using var second = await LanApp.StartAsync(folder: first.Folder, clock: clock);
        using var one = await first.PairedAsync("One");
        using var two = await second.PairedAsync("Two");
        using var twoAtFirst = first.Visitor("192.168.7.21");
        twoAtFirst.Token = two.Token;

        Assert.Equal(HttpStatusCode.OK, await one.StatusAsync("/physics"));
        Assert.Equal(HttpStatusCode.OK, await twoAtFirst.StatusAsync("/physics"));
        second.Services.GetRequiredService<DeviceRegister>().RevokeAll();
        Assert.Equal(HttpStatusCode.Unauthorized, await one.StatusAsync("/physics"));
        Assert.Equal(HttpStatusCode.Unauthorized, await twoAtFirst.StatusAsync("/physics"));
    }

    [Fact]
    public async Task A_tablet_of_one_workshop_is_a_stranger_in_another()
    {
        await using var first = await LanApp.StartAsync();
        await using var second = await LanApp.StartAsync();
        using var tablet = await first.PairedAsync();
        using var elsewhere = second.Visitor("192.168.7.20");
        elsewhere.Token = tablet.Token;

        Assert.Equal(HttpStatusCode.Unauthorized, await elsewhere.StatusAsync("/physics"));
    }

    [Fact]
    public async Task The_record_is_told_which_tablet_it_was()
    {
        await using var app = await LanApp.StartAsync(map: a => a.MapGet("/who-of-the-test", (IDeviceContext device) => device.Device.Name));
        using var tablet = await app.PairedAsync("Bench tablet");
        using var machine = app.Visitor("", "http://localhost");

        using var one = await tablet.GetAsync("/who-of-the-test");
        using var other = await machine.GetAsync("/who-of-the-test");

        Assert.Equal("Bench tablet", await one.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        Assert.Equal("this machine", await other.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    private static void MapStream(WebApplication app) => app.MapGet("/stream-of-the-test", async (HttpContext context) =>
    {
        await context.Response.Body.WriteAsync(new byte[] { 1 }, context.RequestAborted);
        await context.Response.Body.FlushAsync(context.RequestAborted);
        await Task.Delay(Timeout.Infinite, context.RequestAborted);
    });
}
