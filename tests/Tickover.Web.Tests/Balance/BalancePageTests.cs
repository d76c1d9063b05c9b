using System.Net;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Tests.Balance;

/// <summary>The page of rounds as a browser without script uses it.</summary>
public sealed class BalancePageTests
{
    private static readonly double[] Idle = [4.1, 4.0, 4.0, 3.3, 4.1, 4.0, 4.1];

    [Fact]
    public async Task The_keypad_stays_shut_until_the_checks_are_signed()
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app, mayRun: false);

        var page = await app.PageAsync(rounds.Here);

        Assert.Null(page.QuerySelector("#reading"));
        Assert.Contains("engine may run: shut", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Sign the checks first", page.QuerySelector("#next-move")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_round_is_keyed_in_barrel_by_barrel_and_the_next_move_follows_from_it()
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app);
        var first = await app.PageAsync(rounds.Here);
        Assert.Contains("Barrel 1 reads", first.QuerySelector("#pad")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("AsFound", first.QuerySelector("#pad input[name=moment][checked]")!.GetAttribute("value"));

        await rounds.ReadAsync(null, 4.1, 4.0, 4.0);
        var half = await app.PageAsync(rounds.Here);
        Assert.Contains("Read barrel 4", half.QuerySelector("#next-move")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("1 2 3", half.QuerySelector("#balance-plan")!.GetAttribute("data-read"));
        await rounds.ReadAsync(null, 3.3, 4.1, 4.0, 4.1);

        var readings = (await rounds.LookAsync()).Readings;
        Assert.Equal(["1", "2", "3", "4", "5", "6", "1"], readings.Select(r => r.Place.Name), StringComparer.Ordinal);
        Assert.Single(readings.Select(r => r.Round).Distinct());
        Assert.All(readings, r => Assert.Equal((900.0, Moment.AsFound), (r.EngineSpeedRpm, r.Moment)));
        var page = await app.PageAsync($"{rounds.Here}?read=idleAirflow");
        Assert.Contains("Mean 3.9", page.QuerySelector("#engine")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Barrel 4 3.3", page.QuerySelector("a[data-part='barrel:4']")!.GetAttribute("aria-label")!, StringComparison.Ordinal);
        Assert.Contains("As found", page.QuerySelector("#rounds")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("the wider of 0.5 kg/h and 10 %", page.QuerySelector("#working")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_turned_stands_on_the_record_and_is_undone()
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app);
        await rounds.ReadAsync("idleAirflow", Idle);
        await rounds.ReadAsync("airflow1500", 8.0, 8.0, 8.0, 7.4, 8.0, 8.0, 8.0);
        await rounds.ReadAsync("airflow2500", 12.0, 12.0, 12.0, 11.4, 12.0, 12.0, 12.0);
        await rounds.ReadAsync("idleAirflow", Idle);
        var page = await app.PageAsync(rounds.Here);
        var card = page.QuerySelector("#next-move")!;
        Assert.Contains("By-pass screw: out", card.TextContent, StringComparison.Ordinal);
        Assert.NotNull(card.QuerySelector("svg.turn-picture"));
        Assert.Equal("true", page.QuerySelector("a[data-part='bypass:4']")!.GetAttribute("aria-current"));

        using var done = await app.PostFormAsync(rounds.Here, $"{rounds.Here}/acts", ("kind", "Turned"), ("advised", "true"));

        var turn = Assert.Single((await rounds.LookAsync()).ScrewTurns);
        Assert.Equal(("bypass:4", true), (turn.Adjuster, turn.Advised));
        Assert.Contains("rear barrel, by-pass screw: out", turn.Words, StringComparison.Ordinal);
        var next = await app.PageAsync(rounds.Here);
        Assert.Equal("4", next.QuerySelector("#balance-plan")!.GetAttribute("data-sequence"));
        Assert.Contains("not read yet", next.QuerySelector("#next-move")!.TextContent, StringComparison.Ordinal);
        await rounds.ReadAsync(null, 3.9);
        Assert.Contains("got 3.9", (await app.PageAsync(rounds.Here)).QuerySelector("#next-move")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("by-pass screw: out", (await app.PageAsync($"/visits/{rounds.Visit}/journal")).Body!.TextContent, StringComparison.Ordinal);

        using var undo = await app.PostFormAsync(rounds.Here, $"/visits/{rounds.Visit}/undo");
        using var again = await app.PostFormAsync(rounds.Here, $"/visits/{rounds.Visit}/undo");
        Assert.Empty((await rounds.LookAsync()).ScrewTurns);
    }

    [Fact]
    public async Task Anything_else_can_be_turned_and_the_rods_taken_off()
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app, "osprey-v8");
        var buttons = (await app.PageAsync(rounds.Here)).QuerySelectorAll("#turned button[name=turn]").Select(b => b.GetAttribute("value")!).ToList();
        Assert.Contains(buttons, b => b.EndsWith("[stop:2 -0.25]", StringComparison.Ordinal));

        using var turned = await app.PostFormAsync(rounds.Here, $"{rounds.Here}/acts", ("turn", buttons.First(b => b.EndsWith("[bankrod 0.5]", StringComparison.Ordinal))));
        using var off = await PostAsync(app, $"{rounds.Here}/acts", ("kind", "RodsOff"));
        using var looked = await PostAsync(app, $"{rounds.Here}/acts", ("kind", "LookedAt"), ("adjuster", "rod:2"), ("gap", "-0,4"));
        using var check = await PostAsync(app, $"{rounds.Here}/acts", ("kind", "CheckedFor"), ("adjuster", "leakBelowPlate barrel 3"), ("found", "true"));

        var acts = (await rounds.LookAsync()).ScrewTurns;
        Assert.Equal([ScrewTurnKind.Turned, ScrewTurnKind.RodsOff, ScrewTurnKind.LookedAt, ScrewTurnKind.CheckedFor], acts.Select(a => a.Kind));
        Assert.Equal((0.5, -0.4, true), (acts[0].Turns, acts[2].GapMillimetres!.Value, acts[3].Found));
        Assert.Contains("rods off", (await app.PageAsync(rounds.Here)).QuerySelector(".where")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "barrel", "99", "no barrel 99")]
    [InlineData("", "value", "four", "is no figure")]
    [InlineData("", "value", "39", "Keep it or mend it")]
    [InlineData("", "measure", "lambdaIdle", "no reading of a round")]
    [InlineData("/acts", "adjuster", "bypass:12", "nothing that can be turned")]
    [InlineData("/acts", "turns", "0", "it turns by steps")]
    [InlineData("/acts", "turns", "99", "at most")]
    public async Task What_cannot_be_is_said_plainly_and_nothing_is_kept(string at, string field, string value, string said)
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app);
        var fields = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["measure"] = "idleAirflow",
            ["barrel"] = "1",
            ["value"] = "4.0",
            ["rpm"] = "900",
            ["kind"] = "Turned",
            ["adjuster"] = "bypass:4",
            ["turns"] = "0.125",
        };
        fields[field] = value;

        using var refused = await PostAsync(app, rounds.Here + at, [.. fields.Select(f => (f.Key, f.Value))]);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.Contains(said, await refused.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        var record = await rounds.LookAsync();
        Assert.Empty(record.Readings);
        Assert.Empty(record.ScrewTurns);
    }

    [Fact]
    public async Task An_entry_of_the_outbox_sent_twice_is_kept_once_under_its_own_number()
    {
        await using var app = await TestApp.StartAsync();
        var rounds = await Rounds.BeginAsync(app);
        var key = Guid.NewGuid();

        using var first = await PostAsync(app, rounds.Here, ("key", key.ToString()), ("measure", "idleAirflow"), ("barrel", "1"), ("value", "4,0"), ("round", Guid.NewGuid().ToString()));
        using var second = await PostAsync(app, rounds.Here, ("key", key.ToString()), ("measure", "idleAirflow"), ("barrel", "1"), ("value", "4,0"), ("round", Guid.NewGuid().ToString()));

        Assert.Equal((HttpStatusCode.OK, HttpStatusCode.OK), (first.StatusCode, second.StatusCode));
        Assert.Equal(key, Assert.Single((await rounds.LookAsync()).Readings).Id.Value);
        Assert.Contains(key.ToString(), (await app.PageAsync(rounds.Here)).QuerySelector("#balance-plan")!.GetAttribute("data-arrived")!, StringComparison.Ordinal);
    }

    private static Task<HttpResponseMessage> PostAsync(TestApp app, string address, params IReadOnlyList<(string Name, string Value)> fields)
    {
        var request = new HttpRequestMessage(HttpMethod.Post, address) { Content = new FormUrlEncodedContent(fields.Select(f => KeyValuePair.Create(f.Name, f.Value))) };
        request.Headers.Add("Tickover-Outbox", "a key");
        request.Headers.Add("Origin", "http://localhost");
        request.Headers.Add("Accept", "application/json");
        return app.SendAsync(request);
    }
}
