using Tickover.Physics.Inspection;
using Tickover.Workshop.StripDown.Jets;

namespace Tickover.Workshop.Tests.StripDown;

public sealed class JetJudgeTests
{
    [Theory]
    [InlineData("135", 1.35, 1.35, JetFinding.Agrees)]
    [InlineData("1.35", 1.35, 1.35, JetFinding.Agrees)]
    [InlineData("135", 1.35, 1.26, JetFinding.Blocked)]
    [InlineData("135", null, 1.26, JetFinding.Blocked)]
    [InlineData("135", 1.42, 1.42, JetFinding.Wide)]
    [InlineData("135", 1.42, null, JetFinding.Wide)]
    [InlineData("135", 1.28, 1.28, JetFinding.Narrow)]
    [InlineData("135", 1.35, 1.42, JetFinding.Rounded)]
    [InlineData("", 1.35, null, JetFinding.Unknown)]
    [InlineData("", 1.35, 1.20, JetFinding.Blocked)]
    public void Stamp_gauge_and_flow_say_together_what_a_jet_is(string stamp, double? pin, double? flows, JetFinding finding) =>
        Assert.Equal(finding, JetJudge.Judge(Sheet([Jet(stamp, pin, flows)])).Jets.Single().Finding);

    [Fact]
    public void A_number_that_is_a_flow_and_not_a_bore_is_told()
    {
        // 1.30 mm passes some 198 ml a minute on this bench; read as hundredths the stamp would be a bore of 1.98 mm.
        var flow = 6e7 * FlowBench.FlowOf(1.30e-3, 3, 0.5, Sheet([]).Properties(293.15));

        var verdict = JetJudge.Judge(Sheet([Jet($"{flow:0}", 1.30, 1.30)])).Jets.Single();

        Assert.Equal(JetFinding.OtherNumbering, verdict.Finding);
        Assert.Contains("Do not mix", verdict.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_a_set_the_one_that_is_off_is_named_and_not_the_others()
    {
        var (jets, sets) = JetJudge.Judge(Sheet([Jet("135", null, 1.35), Jet("135", null, 1.352), Jet("135", null, 1.45), Jet("135", null, 1.349)]));

        var set = Assert.Single(sets);
        Assert.Same(jets[2], Assert.Single(set.Outside));
        Assert.Equal((1.45 * 1.45 / (1.351 * 1.351)) - 1, jets[2].OffSet!.Value, 0.01);
    }

    [Theory]
    [InlineData("""{ "format": "tickover-jets-1", "jets": [] }""", "jets: No jet is written")]
    [InlineData("""{ "format": "tickover-jets-1", "temperature": 20, "head": 500, "volume": 200, "jets": [{ "part": "main jet", "where": "1", "time": 60 }] }""", "liquid: Which liquid was on the bench")]
    [InlineData("""{ "format": "tickover-jets-1", "liquid": "brandy", "temperature": 20, "head": 500, "volume": 200, "jets": [{ "part": "main jet", "where": "1", "time": 60 }] }""", "\"brandy\" is not known here")]
    [InlineData("""{ "format": "tickover-jets-1", "liquid": "E5", "temperature": 20, "head": 500, "volume": 200, "jets": [{ "part": "main jet", "where": "1", "time": 0 }] }""", "jets[0].time: 0 s")]
    [InlineData("""{ "format": "tickover-jets-1", "liquid": "E5", "temperature": 20, "head": 500, "headAtEnd": 520, "volume": 200, "jets": [{ "part": "main jet", "where": "1", "time": 60 }] }""", "headAtEnd: The head cannot rise")]
    [InlineData("""{ "format": "tickover-jets-1", "liquid": "E5", "temperature": 20, "head": 500, "jets": [{ "part": "main jet", "where": "1", "pin": 135, "time": 60 }] }""", "pin: 135 mm is no bore")]
    [InlineData("""{ "format": "tickover-jets-1", "jets": [{ "part": 3 }] }""", "this is no sheet of jets")]
    public void What_cannot_be_used_is_said(string json, string said)
    {
        var (sheet, faults) = JetSheetDocument.Read(json);

        Assert.Null(sheet);
        Assert.Contains(faults, f => $"{f.Path}: {f.Problem}".Contains(said, StringComparison.Ordinal));
    }

    private static JetSheet Sheet(IReadOnlyList<JetRun> jets) => JetSheetDocument.Read("""{ "format": "tickover-jets-1", "liquid": "E5", "temperature": 20, "head": 500, "jets": [{ "part": "main jet", "where": "1" }] }""").Sheet! with { Jets = jets };

    private static JetRun Jet(string stamp, double? pin, double? flows)
    {
        var sheet = Sheet([]);
        return new JetRun
        {
            Part = "main jet",
            Where = "barrel 1",
            Stamp = stamp,
            PinMillimetres = pin,
            Millilitres = flows is null ? null : 200,
            Seconds = flows is { } bore ? 200e-6 / FlowBench.FlowOf(bore / 1000, 3, 0.5, sheet.Properties(293.15)) : null,
        };
    }
}
