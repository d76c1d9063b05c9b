using System.Text.Json;
using Json.Schema;
using Tickover.Architecture.Tests;

namespace Tickover.Cli.Tests;

/// <summary>What programs read keeps its form.</summary>
public sealed class SchemaTests
{
    public static TheoryData<string, string> Outputs => new()
    {
        { "check", "tickover check samples/tern-2800.car.json samples/faulty.car.json samples/no-such.car.json --json" },
        { "mixture", "tickover mixture samples/osprey-v8.car.json --rpm 800..6000:2600 --throttle \"2; 20; 70\" --json" },
        { "mixture", "tickover mixture samples/tern-2800.car.json --rpm 2000 --throttle 20 --set barrel.mainJet=140 --json" },
        { "explain", "tickover explain samples/gannet-1500.car.json --rpm 3000 --throttle 30 --json" },
        { "fit", "tickover fit samples/tern-2800.car.json samples/tern-road.csv --json" },
        { "jets", "tickover jets samples/tern-2800.car.json --shelf samples/shelf.json --json" },
        { "next", "tickover next samples/tern-2800.car.json --target \"full load=0.85..0.90\" --json" },
        { "log", "tickover log samples/tern-road.csv --car samples/tern-2800.car.json --json" },
        { "log", "tickover log samples/osprey-road.csv samples/gas-readings.csv --car samples/osprey-v8.car.json --json" },
        { "linkage", "tickover linkage samples/osprey.linkage.json --json" },
        { "linkage", "tickover linkage samples/tern.linkage.json --json" },
        { "supply", "tickover supply samples/tern.supply.json --json" },
        { "jet", "tickover jet samples/gannet.jets.json --json" },
        { "level", "tickover level samples/tern.level.json --json" },
        { "wear", "tickover wear samples/tern.wear.json --json" },
        { "build", "tickover build samples/tern.build.json --json" },
        { "wall", "tickover wall samples/gannet.wall.json --json" },
        { "wall", "tickover wall samples/tern.wall.json --json" },
        { "leak", "tickover leak samples/gannet.leak.json --json" },
        { "leak", "tickover leak samples/tern.leak.json --json" },
        { "tank", "tickover tank samples/tern.tank.json --json" },
        { "tank", "tickover tank samples/gannet.tank.json --json" },
        { "sender", "tickover sender samples/tern.tank.json --json" },
        { "sender", "tickover sender samples/gannet.tank.json --json" },
        { "gauge", "tickover gauge samples/tern.gauge.json --json" },
        { "fault", "tickover fault --case samples/tern.fault.json --json" },
        { "fault", "tickover fault --symptom oil-rises --ruled-out float-valve-leak --ruled-out pump-diaphragm --json" },
        { "gas", "tickover gas --co 2.52 --hc 345 --co2 13.0 --o2 0.63 --json" },
        { "gas", "tickover gas --co 1 --hc 100 --co2 1 --o2 20 --lambda 3 --rpm 900 --oil 80 --constants fuel --json" },
        { "gas-table", "tickover gas samples/gas-readings.csv --json" },
        { "balance", "tickover balance samples/osprey.rounds.json --json" },
    };

    [Theory]
    [MemberData(nameof(Outputs))]
    public async Task Json_follows_its_schema(string schema, string line)
    {
        var ran = await Ran.LineAsync(line);

        using var document = JsonDocument.Parse(ran.Output);
        var result = Schema(schema).Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });

        Assert.True(result.IsValid, JsonSerializer.Serialize(result.Details?.Where(d => !d.IsValid)));
    }

    [Theory]
    [InlineData("check", "{ \"schema\": \"tickover/check/1\" }")]
    [InlineData("mixture", "{ \"schema\": \"tickover/mixture/1\", \"car\": 3 }")]
    [InlineData("explain", "{ \"schema\": \"tickover/explain/2\" }")]
    [InlineData("linkage", "{ \"schema\": \"tickover/linkage/1\", \"moves\": [] }")]
    [InlineData("wall", "{ \"schema\": \"tickover/wall/1\", \"verdict\": {} }")]
    [InlineData("leak", "{ \"schema\": \"tickover/leak/1\", \"kind\": \"Perhaps\" }")]
    [InlineData("build", "{ \"schema\": \"tickover/build/1\", \"settings\": [] }")]
    [InlineData("wear", "{ \"schema\": \"tickover/wear/1\", \"items\": [] }")]
    [InlineData("level", "{ \"schema\": \"tickover/level/1\", \"carburettors\": [] }")]
    [InlineData("supply", "{ \"schema\": \"tickover/supply/1\", \"carries\": true }")]
    [InlineData("tank", "{ \"schema\": \"tickover/tank/1\", \"table\": [] }")]
    [InlineData("sender", "{ \"schema\": \"tickover/sender/1\", \"faults\": [] }")]
    [InlineData("gauge", "{ \"schema\": \"tickover/gauge/1\", \"remedies\": [] }")]
    [InlineData("fault", "{ \"schema\": \"tickover/fault/1\", \"standing\": \"Guessed\" }")]
    [InlineData("balance", "{ \"schema\": \"tickover/balance/1\", \"car\": \"x\", \"said\": \"x\" }")]
    [InlineData("gas", "{ \"schema\": \"tickover/gas/1\", \"lambda\": 0.94 }")]
    [InlineData("gas-table", "{ \"schema\": \"tickover/gas-table/1\", \"records\": [] }")]
    public void Schema_refuses_what_is_not_its_form(string schema, string json)
    {
        using var document = JsonDocument.Parse(json);

        Assert.False(Schema(schema).Evaluate(document.RootElement).IsValid);
    }

    [Theory]
    [MemberData(nameof(Samples.Good), MemberType = typeof(Samples))]
    public async Task Good_sample_follows_the_schema_that_the_command_prints(string sample)
    {
        var printed = await Ran.OfAsync("schema");

        using var document = JsonDocument.Parse(Repository.Read(sample));
        var result = JsonSchema.FromText(printed.Output).Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });

        Assert.True(result.IsValid, JsonSerializer.Serialize(result.Details?.Where(d => !d.IsValid)));
    }

    private static JsonSchema Schema(string name) => JsonSchema.FromText(Repository.Read($"docs/schemas/{name}.schema.json"));
}
