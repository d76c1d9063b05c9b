using Tickover.Workshop.FaultFinding;

namespace Tickover.Workshop.Tests.FaultFinding;

public sealed class KnowledgeReaderTests
{
    private const string Head = "\"format\": \"tickover-faults-1\", \"name\": \"ours\", \"version\": \"1\"";

    [Fact]
    public void The_table_of_the_trade_reads_and_every_cause_has_a_symptom_and_a_test()
    {
        var table = FaultKnowledge.Standard;
        var brought = table.Symptoms.SelectMany(s => s.Causes.Keys).ToHashSet(StringComparer.Ordinal);
        var tested = table.Tests.SelectMany(t => t.Causes).ToHashSet(StringComparer.Ordinal);

        Assert.Equal(65, table.Symptoms.Count);
        Assert.All(table.Causes.Values, c => Assert.True(brought.Contains(c.Key) && tested.Contains(c.Key), c.Key));
        Assert.All(table.Symptoms, s => Assert.True(s.Origin.Length > 0 && s.Confidence is "low" or "middling" or "high", s.Key));
        Assert.All(table.Tests, t => Assert.True(t.Origin.Length > 0 && t.Question.Contains('?', StringComparison.Ordinal), t.Key));
    }

    [Theory]
    [InlineData("{", "", "")]
    [InlineData("{ \"format\": \"tickover-tank-1\" }", "format", "tickover-faults-1")]
    [InlineData("{ " + Head + ", \"symptoms\": [{ \"key\": \"a\", \"group\": \"g\", \"words\": \"w\", \"origin\": \"o\", \"confidence\": \"low\", \"causes\": { \"jett\": 0.5 } }] }", "symptoms.a", "Did you mean \"jet\"")]
    [InlineData("{ " + Head + ", \"symptoms\": [{ \"key\": \"a\", \"group\": \"g\", \"words\": \"w\", \"origin\": \"o\", \"confidence\": \"low\", \"causes\": { \"jet\": 1.5 } }] }", "symptoms[0].causes.jet", "from 0 to 1")]
    [InlineData("{ " + Head + ", \"symptoms\": [{ \"key\": \"a\", \"group\": \"g\", \"words\": \"w\", \"origin\": \"o\", \"confidence\": \"certain\", \"causes\": { \"jet\": 0.5 } }] }", "symptoms[0].confidence", "low, middling or high")]
    [InlineData("{ " + Head + ", \"symptoms\": [{ \"key\": \"a\", \"group\": \"g\", \"words\": \"w\", \"origin\": \"o\", \"confidence\": \"low\", \"like\": \"b\" }, { \"key\": \"b\", \"group\": \"g\", \"words\": \"w\", \"origin\": \"o\", \"confidence\": \"low\", \"like\": \"a\" }] }", "symptoms[0].like", "ring: a → b → a")]
    [InlineData("{ " + Head + ", \"symptoms\": [{ \"key\": \"a\", \"group\": \"g\", \"words\": \"w\", \"origin\": \"o\", \"confidence\": \"low\", \"like\": \"zzz\" }] }", "symptoms[0].like", "no symptom \"zzz\"")]
    [InlineData("{ " + Head + ", \"closed\": [{ \"cause\": \"jet\", \"found\": 5, \"of\": 3 }] }", "closed[0].found", "from 0 to 3")]
    [InlineData("{ " + Head + ", \"closed\": [{ \"cause\": \"jett\", \"found\": 1, \"of\": 3 }] }", "closed[0].cause", "Did you mean \"jet\"")]
    [InlineData("{ " + Head + ", \"tests\": [{ \"key\": \"t\", \"question\": \"q?\", \"minutes\": 5, \"origin\": \"o\", \"confidence\": \"low\", \"answers\": [{ \"key\": \"a\", \"words\": \"a\", \"otherwise\": 0.5, \"likelihood\": { \"jet\": 0.5 } }, { \"key\": \"b\", \"words\": \"b\", \"otherwise\": 0.5, \"likelihood\": { \"jet\": 0.6 } }] }] }", "tests.t", "add up to 1.1")]
    [InlineData("{ " + Head + ", \"tests\": [{ \"key\": \"t\", \"question\": \"q?\", \"minutes\": 5, \"caution\": \"nix\", \"covers\": [\"see-jett\"], \"origin\": \"o\", \"confidence\": \"low\", \"answers\": [{ \"key\": \"a\", \"words\": \"a\", \"otherwise\": 0.5, \"likelihood\": { \"jet\": 0.5 } }, { \"key\": \"b\", \"words\": \"b\", \"otherwise\": 0.5, \"likelihood\": { \"jet\": 0.5 } }] }] }", "tests.t.covers", "Did you mean \"see-jet\"")]
    [InlineData("{ " + Head + ", \"colour\": 1 }", "colour", "not known here")]
    public void What_is_wrong_is_said_with_its_place_and_the_way_out(string text, string path, string says)
    {
        var reading = FaultKnowledgeDocument.Read(text, SmallTable.Knowledge);

        Assert.Null(reading.Knowledge);
        Assert.Contains(reading.Faults, f => string.Equals(f.Path, path, StringComparison.Ordinal) || path.Length == 0);
        Assert.Contains(says, string.Join('\n', reading.Faults.Select(f => $"{f.Problem} {f.Allowed} {f.WhatToDo}")), StringComparison.Ordinal);
        Assert.All(reading.Faults, f => Assert.NotEmpty(f.WhatToDo));
    }

    [Fact]
    public void A_workshop_extends_the_table_and_replaces_rows_by_their_key()
    {
        var own = "{ " + Head + ", \"causes\": [{ \"key\": \"mouse\", \"words\": \"A nest in the cleaner\", \"where\": \"cleaner\", \"toDo\": \"take it out\", \"stage\": \"Build\", \"kind\": \"fuel\", \"prior\": 0.01, \"origin\": \"ours\", \"confidence\": \"high\" }],"
            + " \"symptoms\": [{ \"key\": \"stops\", \"group\": \"Road\", \"words\": \"It stops\", \"leak\": 0.1, \"causes\": { \"jet\": 0.5, \"coil\": 0.8, \"mouse\": 0.9 }, \"origin\": \"ours\", \"confidence\": \"high\" }] }";

        var more = FaultKnowledgeDocument.Read(own, SmallTable.Knowledge).Knowledge!;

        Assert.Equal(3, more.Causes.Count);
        Assert.Single(more.Symptoms);
        Assert.Equal("ours", more.Symptom("stops")!.Origin);
        Assert.Equal(2, more.Tests.Count);
    }

    [Fact]
    public void Closed_cases_move_the_chance_and_leave_the_prior_to_be_seen()
    {
        var learned = FaultKnowledgeDocument.Read("{ " + Head + ", \"closed\": [{ \"cause\": \"jet\", \"found\": 30, \"of\": 50 }] }", SmallTable.Knowledge).Knowledge!.Causes["jet"];

        Assert.Equal(0.2, learned.Prior);
        Assert.Equal((0.2 * 50 + 30) / 100, learned.Learned, 1e-12);     // inference (9) with the prior worth 50 cases
        Assert.Contains("30 of 50", OutlookWords.Prior(learned), StringComparison.Ordinal);
    }
}
