using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Tests.Cars;

public class FaultTests
{
    // What is replaced in the twin's document, by what, where the fault is, what it says and what to do.
    public static TheoryData<string, string, string, string, string> Kinds => new()
    {
        { "\"format\": \"tickover-car-1\",", "", "format", "is missing", "Add \"format\"" },
        { "tickover-car-1", "tickover-car-9", "format", "Found the text", "Write \"format\"" },
        { "\"name\": \"Twin\",", "", "name", "is missing", "Add \"name\"" },
        { "\"name\": \"Twin\",", "\"name\": 7,", "name", "Found the number 7", "Write \"name\"" },
        { "\"bore\": \"80 mm\", ", "", "engine.bore", "\"Bore\" is missing", "Add \"bore\": \"80 mm\"" },
        { "\"bore\": \"80 mm\"", "\"bore\": 80", "engine.bore", "80 has no unit", "Write \"80 mm\"" },
        { "\"bore\": \"80 mm\"", "\"bore\": \"-80 mm\"", "engine.bore", "-80 mm is too small", "Check the figure" },
        { "\"bore\": \"80 mm\"", "\"bore\": \"80 cm\"", "engine.bore", "800 mm is too large", "Check the figure" },
        { "\"bore\": \"80 mm\"", "\"bore\": \"80 ells\"", "engine.bore", "\"ells\" is not a unit", "Write it as" },
        { "\"bore\": \"80 mm\"", "\"bore\": [80]", "engine.bore", "Found a list", "Write \"32 mm\"" },
        { "\"bore\": \"80 mm\"", "\"bore\": null", "engine.bore", "Found null", "take the member out" },
        { "\"bore\": \"80 mm\"", "\"bore\": \"80 mm\", \"bore\": \"81 mm\"", "engine.bore", "stands twice", "Take out" },
        { "\"bore\": \"80 mm\"", "\"bohre\": \"80 mm\"", "engine.bohre", "not known", "Did you mean \"bore\"?" },
        { "\"cylinders\": 2", "\"cylinders\": \"two\"", "engine.cylinders", "Found the text", "\"cylinders\": 6" },
        { "\"cylinders\": 2", "\"cylinders\": 13", "engine.cylinders", "Found the number 13", "\"cylinders\": 6" },
        { "\"cylinders\": 2", "\"cylinders\": 4", "engine.firingOrder", "is missing", "Add \"firingOrder\"" },
        { "\"cylinders\": 2", "\"cylinders\": 2, \"firingOrder\": [1, 1]", "engine.firingOrder", "Cylinder 1 stands twice", "Take one out" },
        { "\"cylinders\": 2", "\"cylinders\": 2, \"firingOrder\": [1]", "engine.firingOrder", "leaves out 2", "Add what is left out" },
        { "\"cylinders\": 2", "\"cylinders\": 2, \"firingOrder\": [1, 3]", "engine.firingOrder", "the number 3 is no cylinder", "without quotes" },
        { "\"cylinders\": 2", "\"cylinders\": 2, \"firingAngles\": [\"0°\", \"0°\"]", "engine.firingAngles", "not the angles", "even firing" },
        { "\"cylinders\": 2", "\"cylinders\": 2, \"banks\": [[1], [1]]", "engine.banks", "do not hold every cylinder once", "List the cylinders" },
        { "\"cylinders\": 2", "\"cylinders\": 2, \"peakPowerSpeed\": \"60000 rpm\"", "engine.peakPowerSpeed", "60000 rpm is too large", "Check" },
        { "\"cylinders\": 2", "\"cylinders\": 2, \"peakPowerSpeed\": \"0 rpm\"", "engine.peakPowerSpeed", "0 rpm is too small", "Check" },
        { "\"stroke\": \"75 mm\"", "\"stroke\": \"120 mm\", \"rodLength\": \"55 mm\"", "engine.rodLength", "not longer than half the stroke", "Correct" },
        { "\"stroke\": \"75 mm\"", "\"stroke\": \"75 mm\", \"inletValveDiameter\": \"70 mm\"", "engine.inletValveDiameter", "of the bore's area", "Check valve diameters" },
        { "\"stroke\": \"75 mm\"", "\"stroke\": \"75 mm\", \"inletValveDiameter\": \"12 mm\", \"inletValveLift\": \"14 mm\"", "engine.inletValveLift", "as large as the valve", "Correct" },
        { "\"choke\": \"32 mm\"", "\"choke\": \"41 mm\"", "barrels.choke", "not narrower than the throttle bore", "Correct" },
        { "\"choke\": \"32 mm\"", "\"choke\": \"32\"", "barrels.choke", "32 has no unit", "Write \"32 mm\"" },
        { "\"choke\": \"32 mm\"", "\"choke\": \"32 mm\", \"spindleDiameter\": \"20 mm\"", "barrels.spindleDiameter", "takes half the throttle bore", "Correct" },
        { "\"choke\": \"32 mm\"", "\"choke\": \"16 mm\", \"nozzle\": \"12 mm\"", "barrels.nozzle", "fills the choke", "Correct" },
        { "\"choke\": \"32 mm\"", "\"choke\": \"32 mm\", \"progressionHoles\": [\"1 mm at 25 mm\"]", "barrels.progressionHoles", "never reaches", "Measure from the edge" },
        { "\"choke\": \"32 mm\"", "\"choke\": \"32 mm\", \"progressionHoles\": [\"1 mm\"]", "barrels.progressionHoles[0]", "is not read", "1.1 mm at 0.8 mm" },
        { "\"choke\": \"32 mm\"", "\"choke\": \"32 mm\", \"emulsionHoles\": [\"2 x 1 mm at 60 mm\"]", "barrels.emulsionHoles", "below the bottom of the well", "wellDepth" },
        { "\"choke\": \"32 mm\"", "\"choke\": \"32 mm\", \"emulsionHoles\": \"many\"", "barrels.emulsionHoles", "Found the text", "[\"2 x 1 mm at 6 mm\"]" },
        { "\"mainJet\": 130", "\"mainJet\": 1.35", "carburettors[0].barrels[1].mainJet", "1.35 is too small", "write \"1.35 mm\"" },
        { "\"mainJet\": 130", "\"mainJet\": 1e400", "carburettors[0].barrels[1].mainJet", "is not a number", "135" },
        { "\"feeds\": [2]", "\"feeds\": [1]", "carburettors[0].barrels[1].feeds", "Cylinder 1 is fed twice", "Correct the number" },
        { "\"feeds\": [2]", "\"feeds\": [1]", "carburettors", "No barrel feeds cylinder 2", "Add the cylinder" },
        { "\"feeds\": [2]", "\"feeds\": []", "carburettors[0].barrels[1].feeds", "feeds nothing", "Write the number" },
        { "\"feeds\": [2]", "\"feeds\": [3]", "carburettors[0].barrels[1].feeds", "is no cylinder", "without quotes" },
        { "\"feeds\": [2], ", "", "carburettors[0].barrels[1].feeds", "is missing", "Add \"feeds\"" },
        { "\"feeds\": [2]", "\"feeds\": [1, 2]", "carburettors[0].barrels[1].feeds", "feeds 2 cylinders", "\"manifold\": \"shared\"" },
        { "\"stroke\": \"75 mm\" }", "\"stroke\": \"75 mm\", \"sharedVolume\": \"0 l\" }, \"manifold\": \"shared\"", "engine.sharedVolume", "has no volume", "Give the volume" },
        { "\"name\": \"Twin\",", "\"name\": \"Twin\", \"manifold\": \"log\",", "manifold", "no kind of manifold", "Write \"shared\"" },
        { "\"name\": \"Twin\",", "\"name\": \"Twin\", \"fuel\": \"lamp oil\",", "fuel", "not a fuel", "E5" },
        { "\"name\": \"Twin\",", "\"name\": \"Twin\", \"ambient\": \"fine\",", "ambient", "Found the text", "\"ambient\": {" },
        { "\"name\": \"Twin\",", "\"name\": \"Twin\", \"note\": 5,", "note", "Found the number 5", "Write" },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_fault_names_its_place_and_the_way_out(string old, string replacement, string path, string problem, string whatToDo)
    {
        var reading = CarDocument.Read(CarTexts.TwinWith(old, replacement));

        Assert.Null(reading.Car);
        Assert.True(
            reading.Faults.Any(f => string.Equals(f.Path, path, StringComparison.Ordinal) && f.Problem.Contains(problem, StringComparison.Ordinal) && f.WhatToDo.Contains(whatToDo, StringComparison.Ordinal)),
            CarTexts.Report(reading));
        Assert.All(reading.Faults, f => Assert.All([f.Path, f.Problem, f.Allowed, f.WhatToDo], t => Assert.False(string.IsNullOrWhiteSpace(t))));
    }

    [Fact]
    public void All_faults_come_at_once_each_once_and_from_the_top_down()
    {
        var reading = CarDocument.Read(Repository.Sample("faulty"));

        string[] expected =
        [
            "engine.firingOrder", "engine.bore", "engine.stroke", "engine.compresionRatio", "engine.peakPowerSpeed", "fuel", "ambient.temperature", "ambient.humidity",
            "barrels.choke", "barrels.mainJet", "barrels.airCorrector", "barrels.progressionHoles[1]", "carburettors", "carburettors[0].barrels[1].feeds",
            "carburettors[1].barrels[1].spindleDiameter",
        ];
        Assert.Equal(expected, reading.Faults.Select(f => f.Path), StringComparer.Ordinal);
    }

    [Fact]
    public void A_shared_volume_wants_barrels_that_feed_alike()
    {
        var json = CarTexts.TwinWith("\"feeds\": [2]", "\"feeds\": [1, 2]").Replace("\"name\"", "\"manifold\": \"shared\", \"name\"", StringComparison.Ordinal);

        var reading = CarDocument.Read(json);

        Assert.Contains(reading.Faults, f => f.Path is "carburettors[0].barrels[0].feeds" && f.Problem.Contains("feed different cylinders", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_is_concluded_from_a_figure_that_is_faulty_itself()
    {
        // The bore is unreadable, so that valves and choke are judged against nothing.
        var reading = CarDocument.Read(CarTexts.TwinWith("\"bore\": \"80 mm\"", "\"bore\": \"?\", \"inletValveDiameter\": \"70 mm\""));

        Assert.Equal("engine.bore", Assert.Single(reading.Faults).Path);
    }

    [Theory]
    [InlineData("{\n  \"format\": \"tickover-car-1\",\n  \"name\": \"Cut", "line 3, column 15", "stops before it is complete")]
    [InlineData("{\n  \"format\": \"tickover-car-1\",", "line 2, column 29", "stops before it is complete")]
    [InlineData("{\n  \"name\": nope\n}", "line 2, column 12", "Not readable as JSON from here")]
    [InlineData("{ \"name\": \"a\", } ", "line 1, column 16", "Not readable as JSON from here")]
    [InlineData("{ // a comment\n}", "line 1, column 3", "Not readable as JSON from here")]
    [InlineData("{} {}", "line 1, column 4", "Not readable as JSON from here")]
    [InlineData("", "document", "is empty")]
    [InlineData("  \n ", "document", "is empty")]
    [InlineData("[1]", "document", "Found a list")]
    [InlineData("{\"a\": \"\\ud800\"}", "a", "not known")]
    public void Broken_JSON_is_reported_with_line_and_column(string json, string path, string problem)
    {
        var reading = CarDocument.Read(json);

        Assert.Null(reading.Car);
        Assert.True(reading.Faults.Any(f => string.Equals(f.Path, path, StringComparison.Ordinal) && f.Problem.Contains(problem, StringComparison.Ordinal)), CarTexts.Report(reading));
    }

    [Fact]
    public void A_document_of_more_than_a_mebibyte_is_refused_unread()
    {
        var reading = CarDocument.Read("{\"note\": \"" + new string('ä', 600_000) + "\"}");

        Assert.Equal("The document is larger than 1 MiB", Assert.Single(reading.Faults).Problem);
    }

    [Fact]
    public void Deep_nesting_is_refused()
    {
        var reading = CarDocument.Read(string.Concat(Enumerable.Repeat("{\"a\":", 17)) + "1" + new string('}', 17));

        Assert.Contains("Nested deeper than 16", Assert.Single(reading.Faults).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_flood_of_unknown_members_is_counted()
    {
        var members = string.Join(',', Enumerable.Range(0, 50_000).Select(i => $"\"m{i}\":1"));

        var reading = CarDocument.Read("{" + members + "}");

        Assert.InRange(reading.Faults.Count, 1, 40);
        Assert.Contains(reading.Faults, f => f.Problem is "50000 members are not known here");
    }
}
