using System.Globalization;
using System.Text;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.Tests.Visits.Measures;

public class TradeVocabularyTests
{
    public static TheoryData<string, string> Pairs => [.. TradeVocabulary.Pairs.Select(p => (p.British, p.American))];

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Each_pair_is_put_over_as_a_whole_word_in_its_case(string british, string american)
    {
        Assert.Equal($"the {american}, then", TradeVocabulary.In($"the {british}, then", TradeWords.American));
        Assert.Equal($"({american.ToUpperInvariant()})", TradeVocabulary.In($"({british.ToUpperInvariant()})", TradeWords.American));
        Assert.Equal($"x{british}y", TradeVocabulary.In($"x{british}y", TradeWords.American));
        Assert.Equal(british, TradeVocabulary.In(british, TradeWords.British));
    }

    [Theory]
    [InlineData("Chokes and jets", "Venturis and jets")]
    [InlineData("Auxiliary venturi", "Booster")]
    [InlineData("Twin-barrel carburettors", "Two-barrel carburetors")]
    [InlineData("Spindle clearance, radial", "Shaft clearance, radial")]
    [InlineData("Under-bonnet air", "Under-hood air")]
    [InlineData("butterflies and spanners", "throttle blades and wrenches")]
    [InlineData("Idle mixture screw", "Idle mixture screw")]
    [InlineData("Choke off, engine hot", "Choke off, engine hot")]
    [InlineData("The strangler is shut, the choke is 32 mm", "The choke is shut, the venturi is 32 mm")]
    [InlineData("Tickover keeps the record at tickover", "Tickover keeps the record at idle")]
    [InlineData("the meter must not choke the piston", "the meter must not choke the piston")]
    [InlineData("", "")]
    public void A_sentence_keeps_its_sense(string british, string american) => Assert.Equal(american, TradeVocabulary.In(british, TradeWords.American));

    [Fact]
    public void The_committed_page_of_words_is_the_generated_one() => Repository.AssertGenerated("docs/words.md", Page());

    private static string Page()
    {
        var page = new StringBuilder("""
            # British and American words

            <!-- Generated from the vocabulary by the tests with TICKOVER_UPDATE=1; do not edit by hand. -->

            The product speaks British; a workshop may choose American words in its settings. Only the product's own words change, never what somebody
            typed. "Barrel" stays, since both sides say it. The choke of a cold start ("choke off", "choke cable") is a choke on both sides.

            | British | American | What it is |
            |---|---|---|

            """.ReplaceLineEndings("\n"));
        foreach (var pair in TradeVocabulary.Pairs)
        {
            page.Append(CultureInfo.InvariantCulture, $"| {pair.British} | {pair.American} | {(pair.Meaning.Length == 0 ? "spelling" : pair.Meaning)} |\n");
        }

        return page.ToString();
    }
}
