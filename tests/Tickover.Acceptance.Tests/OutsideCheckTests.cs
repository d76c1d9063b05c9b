using System.Globalization;
using Tickover.Acceptance.Tests.Catalogue;

namespace Tickover.Acceptance.Tests;

public sealed class OutsideCheckTests
{
    private static readonly Dictionary<string, OutsideCheck> ByKey = CheckCatalogue.All.ToDictionary(check => check.Key, StringComparer.Ordinal);

    public static TheoryData<string> Keys() => [.. ByKey.Keys];

    [Theory]
    [MemberData(nameof(Keys))]
    public void Our_figure_agrees_with_the_one_from_outside(string key)
    {
        var check = ByKey[key];

        var ours = check.Ours();

        Assert.True(
            Math.Abs(check.Difference(ours)) <= check.Tolerance,
            string.Create(CultureInfo.InvariantCulture, $"{check.Subject}, {check.Quantity}: there {check.Published} {check.Unit}, here {ours}, {check.Difference(ours):P3} apart, {check.Tolerance:P3} allowed. {check.Source}"));
    }

    public static TheoryData<string> Shapes() => [.. ShapeChecks.All.Select(shape => shape.Statement)];

    [Theory]
    [MemberData(nameof(Shapes))]
    public void What_must_happen_happens(string statement)
    {
        var shape = ShapeChecks.All.Single(s => string.Equals(s.Statement, statement, StringComparison.Ordinal));

        Assert.InRange(shape.Ours(), shape.AtLeast, shape.AtMost);
    }

    [Fact]
    public void Every_check_says_what_it_is_and_could_fail() =>
        Assert.All(CheckCatalogue.All, check =>
        {
            Assert.False(string.IsNullOrWhiteSpace(check.Subject));
            Assert.False(string.IsNullOrWhiteSpace(check.Quantity));
            Assert.False(string.IsNullOrWhiteSpace(check.Source));
            Assert.False(string.IsNullOrWhiteSpace(check.Unit));
            Assert.True(double.IsFinite(check.Published) && check.Published != 0);
            Assert.True(check.Tolerance is > 0 and < 1);
        });
}
