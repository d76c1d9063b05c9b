using System.Globalization;
using System.Net;
using System.Text;
using AngleSharp.Html.Dom;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Tests.Visits;

/// <summary>What a dropped log was taken for: shown column by column, corrected with plain selects, and remembered for files with the same headings.</summary>
public sealed class LogColumnsTests
{
    private static readonly CultureInfo C = CultureInfo.InvariantCulture;

    [Fact]
    public async Task Every_column_is_shown_with_what_it_was_taken_for_and_every_row_is_counted()
    {
        await using var app = await TestApp.DemonstrationAsync();
        var (here, _) = await LogDrops.BeginAsync(app, "Larkfield Osprey V8");

        using var kept = await LogDrops.DropAsync(app, here, "osprey-road.csv", await File.ReadAllBytesAsync(Path.Combine(Repository.Root, "samples", "osprey-road.csv")));
        var page = await app.PageAsync(kept.Headers.Location!.ToString());

        string[] headings = ["Time", "Engine Speed", "Throttle", "Vacuum", "AFR left", "AFR right", "Water", "Oil P", "Note"];
        Assert.Equal(headings, page.QuerySelectorAll(".cols b").Select(b => b.TextContent), StringComparer.Ordinal);
        Assert.Equal("map:mmHg vac", Chosen(page, 4));
        Assert.Equal("lambda@2:AFR 14.7", Chosen(page, 6));
        Assert.Equal("ignored", Chosen(page, 8));
        var text = page.Body!.TextContent;
        Assert.Contains("4,904 of 4,909 rows used", string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.Contains("headings repeated", text, StringComparison.Ordinal);
        Assert.All(page.QuerySelectorAll(".cols .muted"), m => Assert.True(m.TextContent.Trim().Length > 0));
    }

    [Fact]
    public async Task A_correction_is_read_so_at_once_and_remembered_for_the_next_file_with_these_headings()
    {
        await using var app = await TestApp.DemonstrationAsync();
        var (here, visit) = await LogDrops.BeginAsync(app);
        var log = Log("when,speed of the crank,pedal,probe A,probe B");

        using var kept = await LogDrops.DropAsync(app, here, "first.csv", log);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, kept.StatusCode);
        var refused = await TestApp.ParseAsync(kept);
        Assert.Contains("No column was found for", refused.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Empty((await app.Record.VisitAsync(visit))!.Runs);

        using var corrected = await SendAsync(app, refused, (1, "time:s"), (2, "rpm:rpm"), (3, "throttle:%"), (4, "lambda@1:λ"), (5, "ignored"));
        Assert.Equal(HttpStatusCode.Found, corrected.StatusCode);
        var run = Assert.Single((await app.Record.VisitAsync(visit))!.Runs);
        Assert.Contains(run.Sheet!.Columns, c => c is { Name: "probe A", Taken: "lambda@1", IsTold: true });
        Assert.NotEmpty(run.Points);

        using var second = await LogDrops.DropAsync(app, here, "second.csv", log);
        Assert.Equal(HttpStatusCode.Found, second.StatusCode);
        var page = await app.PageAsync(second.Headers.Location!.ToString());
        Assert.Contains("remembered from an earlier log with the same headings", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal(run.Points.Count, (await app.Record.VisitAsync(visit))!.Runs[^1].Points.Count);
    }

    [Fact]
    public async Task A_kept_log_is_read_again_in_place_and_undone_in_one_step()
    {
        await using var app = await TestApp.DemonstrationAsync();
        var (here, visit) = await LogDrops.BeginAsync(app, "Larkfield Osprey V8");
        using var kept = await LogDrops.DropAsync(app, here, "run.csv", Log("time,rpm,tps,lambda1,afr2"));
        var first = Assert.Single((await app.Record.VisitAsync(visit))!.Runs);
        Assert.Contains(first.Points, p => p.Bank is 2);

        using var corrected = await SendAsync(app, await app.PageAsync(kept.Headers.Location!.ToString()), (5, "ignored"));
        var again = Assert.Single((await app.Record.VisitAsync(visit))!.Runs);
        Assert.Equal(first.Id, again.Id);
        Assert.DoesNotContain(again.Points, p => p.Bank is 2);
        Assert.Single((await app.Record.AllAsync<LoggerLayout>()), l => !l.Removed);

        using var undone = await app.PostFormAsync(here, $"/visits/{visit}/undo");
        Assert.Contains(Assert.Single((await app.Record.VisitAsync(visit))!.Runs).Points, p => p.Bank is 2);
        Assert.DoesNotContain(await app.Record.AllAsync<LoggerLayout>(), l => !l.Removed);
    }

    [Fact]
    public async Task A_correction_that_cannot_be_changes_nothing_and_says_what_would_do()
    {
        await using var app = await TestApp.DemonstrationAsync();
        var (here, visit) = await LogDrops.BeginAsync(app);
        using var kept = await LogDrops.DropAsync(app, here, "run.csv", Log("time,rpm,tps,lambda,spare"));

        using var wrong = await SendAsync(app, await app.PageAsync(kept.Headers.Location!.ToString()), (2, "ignored"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, wrong.StatusCode);
        var page = await TestApp.ParseAsync(wrong);
        Assert.Contains("engine speed", page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Nothing was changed", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(Assert.Single((await app.Record.VisitAsync(visit))!.Runs).Points);
    }

    /// <summary>Held speeds of ten seconds each, ten rows a second; the last column is an AFR, or nothing of use.</summary>
    internal static string Log(string headings)
    {
        var text = new StringBuilder(headings).Append('\n');
        for (var i = 0; i < 1200; i++)
        {
            var step = i / 100;
            var (tps, rpm) = (step % 3 == 0 ? 2.0 : 5 + 3 * step, step % 3 == 0 ? 850 : 1500 + 150 * step);
            var wobble = 0.004 * Math.Sin(i);
            text.Append(C, $"{i / 10.0:0.0},{rpm + 8 * Math.Sin(i * 0.7):0},{tps:0.0},{0.95 - 0.005 * step + wobble:0.000},{14.1 - 0.05 * step + wobble:0.00}\n");
        }

        return text.ToString();
    }

    private static string? Chosen(IHtmlDocument page, int place) => page.QuerySelector($"#column-{place} option[selected]")?.GetAttribute("value");

    private static async Task<HttpResponseMessage> SendAsync(TestApp app, IHtmlDocument page, params IReadOnlyList<(int Place, string Meaning)> corrections)
    {
        var form = page.Forms.First(f => f.QuerySelector("select[name^=column-]") is not null);
        var fields = form.QuerySelectorAll("input[name]").ToDictionary(i => i.GetAttribute("name")!, i => i.GetAttribute("value") ?? "", StringComparer.Ordinal);
        foreach (var select in form.QuerySelectorAll("select[name]"))
        {
            fields[select.GetAttribute("name")!] = select.QuerySelector("option[selected]")?.GetAttribute("value") ?? "";
        }

        foreach (var (place, meaning) in corrections)
        {
            fields[$"column-{place}"] = meaning;
        }

        using var request = new HttpRequestMessage(HttpMethod.Post, form.GetAttribute("action"));
        request.Content = new FormUrlEncodedContent(fields);
        return await app.SendAsync(request);
    }
}
