using System.Text.Json.Nodes;
using Tickover.Workshop.Tanks;

namespace Tickover.Workshop.Tests.Tanks;

public sealed class TankDocumentTests
{
    [Fact]
    public void The_sample_is_read_with_both_tanks_alike()
    {
        var set = TankSamples.Tern;

        Assert.Equal("left, right", string.Join(", ", set.Tanks.Select(t => t.Name)));
        Assert.InRange(set.Tanks[0].CapacityLitres, 35, 42);
        Assert.Equal(set.Tanks[0].CapacityLitres, set.Tanks[1].CapacityLitres, 1e-6);
    }

    [Fact]
    public void A_mesh_comes_through_the_reader_that_is_given()
    {
        const string Document = "{ \"format\": \"tickover-tank-1\", \"name\": \"m\", \"tanks\": [{ \"mesh\": { \"file\": \"t.stl\", \"unit\": \"cm\" } }] }";

        Assert.Contains("t.stl", Assert.Single(TankDocument.Read(Document).Faults).ToString(), StringComparison.Ordinal);
        Assert.NotEmpty(TankDocument.Read(Document, _ => [1, 2, 3]).Faults);
    }

    [Theory]
    [InlineData("{}", "format")]
    [InlineData("[1]", "document")]
    [InlineData("{ \"format\": \"tickover-linkage-1\" }", "format")]
    [InlineData("{ \"format\": \"tickover-tank-1\", \"name\": \"x\" }", "tanks")]
    [InlineData("{ \"format\": \"tickover-tank-1\", \"name\": \"x\", \"tanks\": [] }", "tanks")]
    [InlineData("{ \"format\": \"tickover-tank-1\", \"name\": \"x\", \"tanks\": [{ \"box\": [500, 300] }] }", "tanks[0].box")]
    [InlineData("{ \"format\": \"tickover-tank-1\", \"name\": \"x\", \"tanks\": [{ \"box\": [500, -300, 200] }] }", "tanks[0].box[1]")]
    [InlineData("{ \"format\": \"tickover-tank-1\", \"name\": \"x\", \"tanks\": [{ \"name\": \"left\" }] }", "tanks[0]")]
    public void What_is_missing_or_wrong_is_named_by_its_place(string document, string path) =>
        Assert.Contains(TankDocument.Read(document).Faults, f => string.Equals(f.Path, path, StringComparison.Ordinal));

    [Theory]
    [InlineData("corners", "crosses")]
    [InlineData("dip", "rises")]
    [InlineData("litres", "litres")]
    [InlineData("negative", "litres")]
    [InlineData("tank", "left")]
    [InlineData("stop", "stop")]
    public void Slips_of_the_sample_are_told_in_words(string slip, string word)
    {
        var reading = TankDocument.Read(TankSamples.Altered(root => Slip(root, slip)));

        Assert.Null(reading.Set);
        Assert.Contains(reading.Faults, f => f.ToString().Contains(word, StringComparison.OrdinalIgnoreCase));
    }

    private static void Slip(JsonNode root, string slip)
    {
        var steps = root["fill"]!["steps"]!;
        switch (slip)
        {
            case "corners":
                root["tanks"]![0]!["outline"]!["corners"] = JsonNode.Parse("[[0,0],[250,300],[250,0],[0,300]]");
                break;
            case "dip":
                steps[2]!["dip"] = 10;
                break;
            case "litres":
                steps[2]!["litres"] = 1;
                break;
            case "negative":
                root["readings"]![0]!["litres"] = -3;
                break;
            case "tank":
                root["fill"]!["tank"] = "lfet";
                break;
            default:
                root["sender"]!["arm"]!["highStop"] = 10;
                break;
        }
    }
}
