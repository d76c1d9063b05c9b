using System.Net;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Tests.Visits;

/// <summary>Road logs on the page of a visit, and the jets chosen from them, as a browser without script uses them.</summary>
public sealed class RoadLogTests
{
    private static readonly string Sample = Path.Combine(Repository.Root, "samples", "tern-road.csv");

    [Fact]
    public async Task A_log_dropped_on_a_car_is_kept_as_points_and_jets_chosen_from_it_are_fitted_and_undone()
    {
        await using var app = await TestApp.DemonstrationAsync();
        var (here, visit) = await LogDrops.BeginAsync(app);

        using var kept = await LogDrops.DropAsync(app, here, "tern-road.csv", await File.ReadAllBytesAsync(Sample));
        Assert.Equal(HttpStatusCode.Found, kept.StatusCode);
        var run = Assert.Single((await app.Record.VisitAsync(visit))!.Runs);
        Assert.Equal("tern-road.csv", run.Name);
        Assert.True(run.Points.Count > 20, $"{run.Points.Count} points");
        Assert.Contains("decimal point", run.Told, StringComparison.Ordinal);
        Assert.Equal($"{here}/{run.Id}", kept.Headers.Location!.ToString());

        using var begun = await app.PostFormAsync(here, $"{here}/choose");
        Assert.Equal(here, begun.Headers.Location!.ToString());
        var page = await ChosenAsync(app, here);
        Assert.Contains("Least effort", page, StringComparison.Ordinal);
        Assert.Contains("What to read next", page, StringComparison.Ordinal);
        Assert.Contains("Trial card", (await app.PageAsync($"{here}/trial-card")).Body!.TextContent, StringComparison.Ordinal);
        await FitAndUndoAsync(app, here, visit);
    }

    [Theory]
    [InlineData("empty.csv", "")]
    [InlineData("prose.csv", "The car ran well\nand came back.\n")]
    [InlineData("cold.csv", "time,rpm\n0,900\n1,900\n2,900\n")]
    public async Task A_file_that_is_no_log_is_refused_in_words_and_nothing_is_kept(string name, string text)
    {
        await using var app = await TestApp.DemonstrationAsync();
        var (here, visit) = await LogDrops.BeginAsync(app);

        using var refused = await LogDrops.DropAsync(app, here, name, System.Text.Encoding.UTF8.GetBytes(text));

        Assert.InRange((int)refused.StatusCode, 400, 499);
        Assert.Empty((await app.Record.VisitAsync(visit))!.Runs);
    }

    [Fact]
    public async Task The_demonstration_has_two_logged_runs_and_a_shelf_and_takes_them_off_again()
    {
        await using var app = await TestApp.StartAsync();
        using var loaded = await app.PostFormAsync("/begin", "/begin/demonstration");

        var runs = (await app.Record.OpenVisitsAsync()).SelectMany(v => v.Runs.Select(r => (v.Car.Name, r.Name, Readings: r.Points.Count))).ToList();
        Assert.Equal(["Larkfield Osprey V8: osprey-road.csv", "Larkfield Tern 2800: tern-road.csv"], runs.Select(r => $"{r.Item1}: {r.Item2}").Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.All(runs, r => Assert.InRange(r.Readings, 30, 1000));
        Assert.Contains("135", (await app.PageAsync("/shelf")).QuerySelector("table.shelf")!.TextContent, StringComparison.Ordinal);

        using var removed = await app.PostFormAsync("/demonstration", "/demonstration/remove");
        Assert.Equal(HttpStatusCode.Found, removed.StatusCode);
        Assert.All(await app.Record.AllAsync<StockJet>(), s => Assert.True(s.Removed));
        Assert.All(await app.Record.AllAsync<RoadRun>(), r => Assert.True(r.Removed));
    }

    [Fact]
    public async Task The_shelf_is_counted_once_a_size()
    {
        await using var app = await TestApp.DemonstrationAsync();
        await LogDrops.BeginAsync(app);

        using var first = await app.PostFormAsync("/shelf", "/shelf", ("part", "mainJet"), ("size", "135"), ("count", "4"));
        using var again = await app.PostFormAsync("/shelf", "/shelf", ("part", "mainJet"), ("size", "135"), ("count", "6"));
        using var wrong = await app.PostFormAsync("/shelf", "/shelf", ("part", "mainJet"), ("size", "big"), ("count", "6"));

        Assert.Equal(HttpStatusCode.Found, again.StatusCode);
        Assert.InRange((int)wrong.StatusCode, 400, 499);
        Assert.Equal(6, Assert.Single(await app.Record.AllAsync<StockJet>(), s => s.Id == StockJet.IdFor("mainJet", 135)).Count);
    }

    // The set goes in by a button, the papers tell of it, and Undo takes it out of them again.
    private static async Task FitAndUndoAsync(TestApp app, string here, Id<Visit> visit)
    {
        var before = (await app.Record.VisitAsync(visit))!;
        var paper = $"/visits/{visit}/account";
        var account = (await app.PageAsync(paper)).Body!.TextContent;

        using var fitted = await app.PostFormAsync(here, $"{here}/fit", ("choice", "ordered"));
        Assert.Equal(HttpStatusCode.Found, fitted.StatusCode);
        var record = (await app.Record.VisitAsync(visit))!;
        var fitting = Assert.Single(record.Fittings);
        Assert.Equal(("best if ordered", "tern-road.csv"), (fitting.Choice, fitting.RestsOn));
        Assert.InRange(fitting.Share, fitting.ShareLowest, fitting.ShareHighest);
        Assert.True(fitting.ShareHighest - fitting.ShareLowest > 0.02, $"{fitting.ShareLowest} to {fitting.ShareHighest} is no band");
        Assert.Equal(fitting.Description, record.Descriptions[^1].Id);
        Assert.All(fitting.Parts, p => Assert.NotEqual(p.From, p.To, StringComparer.Ordinal));
        Assert.True(record.Readings.Count(r => r.Moment == Moment.AsLeft) > before.Readings.Count(r => r.Moment == Moment.AsLeft), "the stamped numbers are readings as left");
        Assert.Contains("Sets fitted", (await app.PageAsync(here)).Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("best if ordered", (await app.PageAsync(paper)).Body!.TextContent, StringComparison.Ordinal);

        Assert.DoesNotContain("I fit this set", (await app.PageAsync(here)).Body!.TextContent, StringComparison.Ordinal);

        using var undone = await app.PostFormAsync(here, $"/visits/{visit}/undo");
        var after = (await app.Record.VisitAsync(visit))!;
        Assert.Empty(after.Fittings);
        Assert.Equal(before.Descriptions[^1].Id, after.Descriptions[^1].Id);
        Assert.Equal(account, (await app.PageAsync(paper)).Body!.TextContent);
    }

    private static async Task<string> ChosenAsync(TestApp app, string here)
    {
        for (var k = 0; k < 600; k++)
        {
            var page = await app.PageAsync(here);
            if (page.QuerySelector("[data-wait]") is null)
            {
                return page.Body!.TextContent;
            }

            await Task.Delay(200);
        }

        throw new TimeoutException("the choice of jets did not end");
    }
}
