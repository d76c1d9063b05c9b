using System.Text.Json;

namespace Tickover.Cli.Tests;

public sealed class TankCommandTests
{
    private const string Mesh = """{ "format": "tickover-tank-1", "name": "x", "tanks": [{ "mesh": { "file": "box.stl" } }] }""";

    [Fact]
    public async Task Table_rises_line_by_line_to_what_the_tanks_hold()
    {
        var ran = await Ran.OfAsync("tank", "samples/tern.tank.json", "--json");

        Assert.Equal(ExitCode.Done, ran.Code);
        using var document = JsonDocument.Parse(ran.Output);
        var table = document.RootElement.GetProperty("table").EnumerateArray().ToArray();
        var dips = table.Select(l => l.GetProperty("dipMillimetres")[0].GetDouble()).ToArray();
        Assert.Equal(dips.Order(), dips);
        Assert.Equal(document.RootElement.GetProperty("capacityLitres").GetDouble(), table[^1].GetProperty("litres").GetDouble());
        Assert.All(table, l => Assert.Equal(l.GetProperty("litres").GetDouble(), l.GetProperty("tankLitres").EnumerateArray().Sum(t => t.GetDouble()), 0.002));
        Assert.Equal("Agree", document.RootElement.GetProperty("fill").GetProperty("verdict").GetString());
    }

    [Theory]
    [InlineData("samples/tern.tank.json", "AddedResistance")]
    [InlineData("samples/gannet.tank.json", "WrongFamily")]
    public async Task Fault_of_a_sample_is_named(string sample, string fault)
    {
        var ran = await Ran.OfAsync("sender", sample, "--json");

        using var document = JsonDocument.Parse(ran.Output);
        var first = document.RootElement.GetProperty("faults")[0];
        Assert.Equal(fault, first.GetProperty("fault").GetString());
        Assert.InRange(first.GetProperty("probability").GetDouble(), 0.5, 1);
        Assert.Single(document.RootElement.GetProperty("cures").EnumerateArray(), c => c.GetProperty("advised").GetBoolean());
    }

    [Fact]
    public async Task Every_table_comes_with_the_caution_on_vapour()
    {
        Assert.Contains("outside the vapour zone", Flat((await Ran.OfAsync("tank", "samples/gannet.tank.json")).Output), StringComparison.Ordinal);
        Assert.Contains("outside the vapour zone", Flat((await Ran.OfAsync("sender", "samples/gannet.tank.json")).Output), StringComparison.Ordinal);

        static string Flat(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    [Theory]
    [InlineData("samples/no-such.tank.json", "There is no file")]
    [InlineData("samples/tern.linkage.json", "tickover-tank-1")]
    [InlineData("samples/tern-road.csv", "Not readable as JSON")]
    public async Task What_cannot_be_used_is_said_in_words(string file, string said)
    {
        var ran = await Ran.OfAsync("tank", file);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Empty(ran.Output);
        Assert.Contains(said, ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "name": "a", "outline": { "depth": 300, "corners": [[0, 0], [400, 300], [400, 0], [0, 300]] } }""", "crosses")]
    [InlineData("""{ "name": "a", "box": [500, 300] }""", "numbers")]
    [InlineData("""{ "name": "a", "box": [500, 300, 200], "round": { "diameter": 300, "length": 500 } }""", "round")]
    [InlineData("""{ "name": "a", "box": [500, 300, 200], "cutOuts": [{ "box": [50, 50, 50], "at": [900, 0, 0] }] }""", "outside")]
    [InlineData("""{ "name": "a", "mesh": { "file": "../x.stl" } }""", "x.stl")]
    public async Task A_shape_that_cannot_be_is_told_with_its_place(string tank, string said)
    {
        var ran = await Ran.OfAsync($$"""{ "format": "tickover-tank-1", "name": "x", "tanks": [{{tank}}] }""", ["tank", "-"]);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Contains("tanks[0]", ran.Error, StringComparison.Ordinal);
        Assert.Contains(said, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Litres_that_fall_and_arms_that_do_not_reach_are_refused_together()
    {
        var ran = await Ran.OfAsync(
            """
            { "format": "tickover-tank-1", "name": "x", "tanks": [{ "box": [500, 300, 200] }],
              "fill": { "steps": [{ "litres": 10, "dip": 70 }, { "litres": 5, "dip": 90 }] },
              "sender": { "arm": { "pivot": 100, "length": 50, "lowStop": 5, "highStop": 190 } },
              "readings": [{ "litres": -3, "ohms": 50 }] }
            """, ["tank", "-"]);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Contains("fill.steps[1].litres", ran.Error, StringComparison.Ordinal);
        Assert.Contains("sender.arm.length", ran.Error, StringComparison.Ordinal);
        Assert.Contains("readings[0].litres", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_sender_alone_needs_no_shape()
    {
        const string Json = """{ "format": "tickover-tank-1", "name": "x", "capacity": 45, "readings": [{ "litres": 2, "ohms": "open" }, { "litres": 40, "ohms": "open" }] }""";

        var (tank, sender) = (await Ran.OfAsync(Json, ["tank", "-"]), await Ran.OfAsync(Json, ["sender", "-"]));

        Assert.Equal(ExitCode.UnusableInput, tank.Code);
        Assert.Equal(ExitCode.Done, sender.Code);
        Assert.Contains("Sender or its wire open", sender.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_mesh_is_read_from_beside_its_document()
    {
        var folder = Directory.CreateTempSubdirectory("tickover-cli-");
        try
        {
            await File.WriteAllTextAsync(Path.Combine(folder.FullName, "box.stl"), Box(500, 300, 200));
            await File.WriteAllTextAsync(Path.Combine(folder.FullName, "tank.json"), Mesh);

            var ran = await Ran.OfAsync("tank", Path.Combine(folder.FullName, "tank.json"), "--json");

            using var document = JsonDocument.Parse(ran.Output);
            Assert.Equal(30, document.RootElement.GetProperty("capacityLitres").GetDouble(), 1e-6);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    // Corners numbered by bits: 1 ahead, 2 to the left, 4 up.
    private static string Box(int x, int y, int z)
    {
        int[][] faces = [[0, 3, 1], [0, 2, 3], [4, 5, 7], [4, 7, 6], [0, 1, 5], [0, 5, 4], [2, 7, 3], [2, 6, 7], [0, 6, 2], [0, 4, 6], [1, 3, 7], [1, 7, 5]];
        return "solid b\n" + string.Concat(faces.SelectMany(f => f.Select(c => $"vertex {(c & 1) * x} {(c >> 1 & 1) * y} {(c >> 2) * z}\n"))) + "endsolid b\n";
    }
}
