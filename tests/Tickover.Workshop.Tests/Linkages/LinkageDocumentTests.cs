using System.Text.Json.Nodes;
using CsCheck;
using Tickover.Workshop.Linkages;
using Tickover.Workshop.Linkages.Parts;

namespace Tickover.Workshop.Tests.Linkages;

public sealed class LinkageDocumentTests
{
    public static TheoryData<string, string> Slips => new()
    {
        // what is altered, what has to be said of it: where, and the way out
        { "pedal.shaft=pedal shfat", "pedal.shaft: Did you mean \"pedal shaft\"?" },
        { "rods[2].to=left rear/bonk", "rods[2].to: Did you mean \"left rear/bank\"?" },
        { "rods[2].length=90", "rods[2].length: Measure the rod between the centres of its balls" },
        { "rods[2].length=long", "rods[2].length: Write" },
        { "rods[2].lenght=158", "rods[2].lenght: Did you mean \"length\"?" },
        { "rods[4].to=left rear/bank", "rods[4].to: Name the lever of the shaft that the rod turns" },
        { "rods[4].to=right rear/bank", "rods[4]: Swap from and to" },
        { "rods[0].from=left front/link", "rods[0]: Swap from and to, or describe the rod" },
        { "carburettors[1].idle=7", "carburettors[1].idle: Measure both" },
        { "carburettors[1].full=5", "carburettors[1].full: Measure both" },
        { "carburettors[1].bore=4", "carburettors[1].bore: Measure it again" },
        { "carburettors[1].opens=left", "carburettors[1].opens: Write" },
        { "carburettors[1].name=left front", "shafts: Rename" },
        { "shafts[1].axis=sideways", "shafts[1].axis: Write" },
        { "warmth.rise=900", "warmth.rise: Measure it again" },
        { "format=tickover-car-1", "format: Write" },
    };

    [Fact]
    public void Samples_are_read_whole()
    {
        Assert.Equal(["left front", "left rear", "right front", "right rear"], LinkageSamples.Osprey.Carburettors.Select(c => LinkageSamples.Osprey.Shafts[c].Name), StringComparer.Ordinal);
        Assert.Equal("pedal shaft", LinkageSamples.Osprey.Shafts[0].Name);
        Assert.Equal(2, LinkageSamples.Tern.Links.OfType<CouplingPart>().Count());
        Assert.Equal(3, LinkageSamples.Osprey.StepsTo(LinkageSamples.Osprey.Carburettors[1]));
        Assert.Equal(4, LinkageSamples.Osprey.StepsTo(LinkageSamples.Osprey.Carburettors[0]));
    }

    [Fact]
    public void A_rod_without_a_length_is_the_one_that_drops_on()
    {
        var rod = LinkageSamples.Osprey.Links.OfType<RodPart>().Single(r => r.Name is "left link");

        Assert.True(rod.IsFitted);
        Assert.Equal(200, rod.LengthMillimetres, 1e-9); // like levers, 200 mm apart
    }

    [Theory]
    [MemberData(nameof(Slips))]
    public void A_slip_is_named_where_it_stands_with_the_way_out(string slip, string said)
    {
        var reading = LinkageDocument.Read(LinkageSamples.Altered("osprey", root => Set(root, slip)));

        Assert.Null(reading.Linkage);
        Assert.Contains(reading.Faults, f => $"{f.Path}: {f.WhatToDo}".StartsWith(said, StringComparison.Ordinal));
        Assert.All(reading.Faults, f => Assert.DoesNotContain("car document", f.Allowed + f.WhatToDo, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{")]
    [InlineData("{}")]
    [InlineData("null")]
    [InlineData("{ \"format\": \"tickover-linkage-1\", \"rods\": [3], \"shafts\": {}, \"carburettors\": [], \"pedal\": [] }")]
    public void What_is_no_linkage_is_refused_in_words(string json)
    {
        var reading = LinkageDocument.Read(json);

        Assert.Null(reading.Linkage);
        Assert.All(reading.Faults, f => Assert.True(f is { Problem.Length: > 0, WhatToDo.Length: > 0 }));
        Assert.NotEmpty(reading.Faults);
    }

    [Fact]
    public void Spindles_out_of_line_cannot_be_coupled()
    {
        var reading = LinkageDocument.Read(LinkageSamples.Altered("tern", root => root["carburettors"]![0]!["at"]![2] = 340));

        var fault = Assert.Single(reading.Faults);
        Assert.Equal("couplings[0]", fault.Path);
        Assert.Contains("40 mm out of line", fault.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Whatever_is_cut_out_of_it_the_reader_answers() =>
        Gen.Select(Gen.Int[0, 5000], Gen.Int[1, 60]).Sample((start, length) =>
        {
            var text = LinkageSamples.Text("osprey");
            start %= text.Length;
            var reading = LinkageDocument.Read(text.Remove(start, Math.Min(length, text.Length - start)));
            return reading.Linkage is not null ^ reading.Faults.Count > 0;
        }, iter: 300);

    // "rods[2].to=left rear/bank": a path and what is to stand there.
    private static void Set(JsonNode root, string slip)
    {
        var (path, value) = (slip.Split('=')[0], slip.Split('=')[1]);
        var names = path.Replace("[", ".", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal).Split('.');
        var node = root;
        foreach (var name in names.SkipLast(1))
        {
            node = int.TryParse(name, System.Globalization.CultureInfo.InvariantCulture, out var index) ? node[index]! : node[name]!;
        }

        node[names[^1]] = double.TryParse(value, System.Globalization.CultureInfo.InvariantCulture, out var number) ? number : value;
    }
}
