using Tickover.Workshop.FaultFinding;

namespace Tickover.Workshop.Tests.FaultFinding;

public sealed class FaultCaseTests
{
    private static readonly FaultKnowledge Trade = FaultKnowledge.Standard;

    [Fact]
    public void A_case_is_written_and_read_again_the_same()
    {
        var given = new FaultCase
        {
            Name = "a car",
            Symptoms = ["flat-spot-stab"],
            RuledOut = ["linkage-slack"],
            Answers = [new("watch-shots", "both-weak"), new("look-accel-balls", "no", FaultCertainty.Leaning), new("look-accel-diaphragm", "", FaultCertainty.Unsure)],
        };

        var read = FaultCaseDocument.Read(FaultCaseDocument.Write(given), Trade).Case!;

        Assert.Equal(given.Name, read.Name);
        Assert.Equal(given.Symptoms, read.Symptoms, StringComparer.Ordinal);
        Assert.Equal(given.RuledOut, read.RuledOut, StringComparer.Ordinal);
        Assert.Equal(given.Answers, read.Answers);
    }

    [Theory]
    [InlineData("\"symptoms\": [\"flat spot on a stab\"]", "symptoms[0]", "flat-spot-stab")]
    [InlineData("\"symptoms\": []", "symptoms", "\"symptoms\": [")]
    [InlineData("\"symptoms\": [\"no-idle\"], \"ruledOut\": [\"idle-jet-bloked\"]", "ruledOut[0]", "idle-jet-blocked")]
    [InlineData("\"symptoms\": [\"no-idle\"], \"answers\": [{ \"test\": \"swap-idle-jets\", \"answer\": \"yes\" }]", "answers[0].test", "swap-idle-jet")]
    [InlineData("\"symptoms\": [\"no-idle\"], \"answers\": [{ \"test\": \"swap-idle-jet\", \"answer\": \"perhaps\" }]", "answers[0].answer", "moves, stays or unsure")]
    [InlineData("\"symptoms\": [\"no-idle\"], \"answers\": [3]", "answers[0]", "an object in braces")]
    public void What_is_wrong_with_a_case_is_said_with_its_place(string members, string path, string says)
    {
        var reading = FaultCaseDocument.Read($"{{ \"format\": \"tickover-fault-1\", {members} }}", Trade);

        Assert.Null(reading.Case);
        var fault = Assert.Single(reading.Faults, f => string.Equals(f.Path, path, StringComparison.Ordinal));
        Assert.Contains(says, $"{fault.Problem} {fault.Allowed} {fault.WhatToDo}", StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Flat spot only on a stab", "flat-spot-stab")]
    [InlineData("HESITATES-CHANGEOVER", "hesitates-changeover")]
    [InlineData("petrol smell", "fuel-smell")]
    public void A_symptom_is_known_by_key_words_or_other_words(string text, string key) => Assert.Equal(key, SymptomSearch.Find(Trade, text).Meant!.Key);

    [Theory]
    [InlineData("stops after a few miles", "dies-after-miles")]
    [InlineData("floods", "floods-one")]
    [InlineData("flta-spot-stab", "flat-spot-stab")]
    public void To_an_unknown_symptom_the_closest_are_offered(string text, string among)
    {
        var (meant, closest) = SymptomSearch.Find(Trade, text);

        Assert.Null(meant);
        Assert.Contains(closest, s => string.Equals(s.Key, among, StringComparison.Ordinal));
    }

    [Fact]
    public void To_nonsense_nothing_is_offered() => Assert.Contains("Nothing comes near", SymptomSearch.Offer(SymptomSearch.Find(Trade, "xyzzy qqqq").Closest), StringComparison.Ordinal);

    [Theory]
    [InlineData("yes", "yes", FaultCertainty.Sure)]
    [InlineData("Y", "yes", FaultCertainty.Sure)]
    [InlineData("2", "no", FaultCertainty.Sure)]
    [InlineData("no ?", "no", FaultCertainty.Leaning)]
    [InlineData("?", "", FaultCertainty.Unsure)]
    [InlineData("UNSURE", "", FaultCertainty.Unsure)]
    public void A_reply_is_read_by_key_number_words_and_doubt(string said, string answer, FaultCertainty how) =>
        Assert.Equal(new FaultGiven("look-cap-seal", answer, how), FaultReply.Read(Trade.Test("look-cap-seal")!, said));

    [Theory]
    [InlineData("maybe")]
    [InlineData("3")]
    [InlineData("0")]
    [InlineData("")]
    public void What_is_no_reply_is_none(string said) => Assert.Null(FaultReply.Read(Trade.Test("look-cap-seal")!, said));
}
