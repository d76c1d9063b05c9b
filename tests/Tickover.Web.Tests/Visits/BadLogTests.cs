using System.Net;

namespace Tickover.Web.Tests.Visits;

/// <summary>Logs that cannot be used, dropped on a car: the page says what is missing and what would do, and keeps nothing.</summary>
public sealed class BadLogTests
{
    [Fact]
    public async Task Says_what_is_missing_and_keeps_nothing()
    {
        await using var app = await TestApp.DemonstrationAsync();
        var (here, visit) = await LogDrops.BeginAsync(app);
        var junk = new byte[20_000];
        new Random(3).NextBytes(junk);
        var good = LogColumnsTests.Log("time,rpm,tps,lambda,ect");
        (string Name, byte[] Content, string Said)[] bad =
        [
            ("empty.csv", [], "The file is empty. Copy it again from the logger."),
            ("junk.csv", junk, "The file is not text."),
            ("no-mixture.csv", Bytes(good.Replace("lambda", "nothing", StringComparison.Ordinal)), "No column was found for λ or AFR."),
            ("cold.csv", Bytes(good), "The engine never got warm (at most 14 °C)"),
            ("two-speeds.csv", Bytes(TwoSpeeds(good)), "two engines in one file"),
            ("constant.csv", Bytes(Constant(good)), "is the same in every row"),
        ];
        foreach (var (name, content, said) in bad)
        {
            using var answer = await LogDrops.DropAsync(app, here, name, content);
            Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
            var alert = (await TestApp.ParseAsync(answer)).QuerySelector("[role=alert]")!.TextContent;
            Assert.Contains(said, alert, StringComparison.Ordinal);
            Assert.Contains("Nothing was kept", alert, StringComparison.Ordinal);
            Assert.DoesNotContain("--set", alert, StringComparison.Ordinal);
        }

        Assert.Empty((await app.Record.VisitAsync(visit))!.Runs);
    }

    [Fact]
    public async Task Of_a_thousand_columns_those_used_are_shown_and_any_other_can_be_named()
    {
        await using var app = await TestApp.DemonstrationAsync();
        var (here, visit) = await LogDrops.BeginAsync(app);
        var lines = LogColumnsTests.Log("time,rpm,tps,lambda,last").Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var spare = string.Concat(Enumerable.Range(0, 995).Select(i => $",spare {i}"));
        var log = $"{lines[0]}{spare}\n" + string.Concat(lines.Skip(1).Select(l => l + string.Concat(Enumerable.Repeat(",1", 995)) + "\n"));

        using var kept = await LogDrops.DropAsync(app, here, "wide.csv", log);
        var page = await app.PageAsync(kept.Headers.Location!.ToString());

        Assert.InRange(page.QuerySelectorAll(".cols select[name^=column-]").Length, 5, 40);
        Assert.Contains(page.QuerySelectorAll("#further option"), o => string.Equals(o.TextContent, "spare 994", StringComparison.Ordinal));
        Assert.Equal(1000, page.QuerySelectorAll(".cols select[name^=column-]").Length + page.QuerySelectorAll("#further option").Length - 1);
        Assert.Single((await app.Record.VisitAsync(visit))!.Runs);
    }

    [Fact]
    public async Task Two_engines_one_after_the_other_are_said_and_one_part_is_taken()
    {
        await using var app = await TestApp.DemonstrationAsync();
        var (here, visit) = await LogDrops.BeginAsync(app);
        var first = LogColumnsTests.Log("time,rpm,tps,lambda,spare");
        var other = string.Join('\n', first.Split('\n').Skip(1).Select(Faster));

        using var kept = await LogDrops.DropAsync(app, here, "both.csv", first + other);
        var address = kept.Headers.Location!.ToString();
        Assert.Contains("There may be two engines in the file", (await app.PageAsync(address)).Body!.TextContent, StringComparison.Ordinal);
        var both = Assert.Single((await app.Record.VisitAsync(visit))!.Runs);

        using var taken = await app.PostFormAsync(address, address, ("part", "2"));
        var run = Assert.Single((await app.Record.VisitAsync(visit))!.Runs);
        Assert.Equal(2, run.Sheet!.PartTaken);
        Assert.InRange(run.Points.Count, 1, both.Points.Count - 1);
        Assert.DoesNotContain("two engines", run.Told, StringComparison.Ordinal);
    }

    private static byte[] Bytes(string text) => System.Text.Encoding.UTF8.GetBytes(text);

    // A second speed that goes its own way in place of the last column.
    private static string TwoSpeeds(string log) => Rewritten(log, "time,rpm1,tps,lambda,rpm2", (cells, i) => cells[4] = $"{2000 + (i * 37 % 1500)}");

    private static string Constant(string log) => Rewritten(log, "time,rpm,tps,lambda,spare", (cells, _) => cells[3] = "0.98");

    private static string Faster(string line)
    {
        var cells = line.Split(',');
        if (cells.Length == 5 && cells[2] is "2.0")
        {
            cells[1] = "1300";
        }

        return string.Join(',', cells);
    }

    private static string Rewritten(string log, string headings, Action<string[], int> change) =>
        headings + "\n" + string.Concat(log.Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select((line, i) =>
        {
            var cells = line.Split(',');
            change(cells, i);
            return string.Join(',', cells) + "\n";
        }));
}
