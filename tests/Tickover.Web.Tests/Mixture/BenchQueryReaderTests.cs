using CsCheck;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.WebUtilities;
using Tickover.Web.Mixture;

namespace Tickover.Web.Tests.Mixture;

public sealed class BenchQueryReaderTests
{
    private static readonly Gen<string> Odd = Gen.OneOf<string>(
        Gen.String,
        Gen.OneOf("NaN", "Infinity", "-Infinity", "1e400", "0", "-5", "60000", "2,5", "11.5", "", " ", "½", "0x10", "１２", "1,000", "--", "null"));

    [Fact]
    public void A_comma_and_a_point_read_alike()
    {
        var (query, problems) = Read("?barrel=2&rpm=2750&throttle=3,5");

        Assert.Empty(problems);
        Assert.Equal(2, query.Barrel);
        Assert.Equal(3.5, query.Throttle);
    }

    [Theory]
    [InlineData("rpm", "0")]
    [InlineData("rpm", "60000")]
    [InlineData("rpm", "NaN")]
    [InlineData("rpm", "Infinity")]
    [InlineData("throttle", "-5")]
    [InlineData("throttle", "91")]
    [InlineData("barrel", "1.5")]
    [InlineData("barrel", "0")]
    [InlineData("show", "everything")]
    [InlineData("show", "7")]
    public void What_cannot_be_used_is_named_with_what_is_allowed(string name, string value)
    {
        var (_, problems) = Read($"?{name}={value}");

        var problem = Assert.Single(problems);
        Assert.StartsWith($"{name}: \"{value}\"", problem, StringComparison.Ordinal);
        Assert.Contains("Give", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_wrong_is_said_at_once() => Assert.Equal(3, Read("?barrel=x&rpm=0&throttle=-5").Problems.Count);

    [Fact]
    public void No_text_whatever_throws_or_lets_a_number_through_that_is_none() =>
        Gen.Select(Odd, Odd, Odd, Odd).Sample((rpm, throttle, part, value) =>
        {
            var (query, _) = BenchQueryReader.Read(new QueryCollection(new Dictionary<string, Microsoft.Extensions.Primitives.StringValues>(StringComparer.Ordinal)
            {
                ["rpm"] = rpm,
                ["throttle"] = throttle,
                ["barrel"] = rpm,
                ["part"] = part,
                ["value"] = value,
                ["also"] = $"{part}:{value}",
            }));
            return query.Rpm is null or (>= 100 and <= 20_000) && query.Throttle is null or (>= 0 and <= 90) && query.Barrel is >= 1 and <= 64;
        });

    [Fact]
    public void An_address_says_the_state_it_was_made_of() =>
        Gen.Select(Gen.Int[1, 8], Gen.Int[10, 700], Gen.Int[0, 180], Gen.Int[0, 2], Gen.OneOf("idleJet", "choke", "a b&c=d"), Gen.OneOf("55", "34 mm", "2½", "a:b"))
            .Sample((barrel, tens, halves, show, part, value) =>
            {
                var query = new BenchQuery
                {
                    Barrel = barrel,
                    Rpm = tens * 10,
                    Throttle = halves / 2.0,
                    Show = (MapShown)show,
                    Part = part,
                    Value = value,
                    OneBarrel = barrel > 4,
                    Also = [new TrialChange("mainJet", value)],
                };

                var (read, problems) = Read(query.ToAddress());

                return problems.Count == 0 && read with { Also = query.Also } == query && read.Also.SequenceEqual(query.Also);
            });

    [Fact]
    public void Another_part_under_the_hand_leaves_the_last_one_on_trial()
    {
        var query = new BenchQuery { Part = "idleJet", Value = "60" }.Pick("choke");

        Assert.Equal("choke", query.Part);
        Assert.Null(query.Value);
        Assert.Equal([new TrialChange("idleJet", "60")], query.Changes);
        Assert.Equal("60", query.Pick("idleJet").Value);
        Assert.Empty(query.Pick("idleJet").Also);
    }

    private static (BenchQuery Query, IReadOnlyList<string> Problems) Read(string query) =>
        BenchQueryReader.Read(new QueryCollection(QueryHelpers.ParseQuery(query)));
}
