using System.Globalization;
using CsCheck;
using Tickover.Cli.Input;

namespace Tickover.Cli.Tests;

public sealed class NumberListTests
{
    [Theory]
    [InlineData("4000", new[] { 4000.0 })]
    [InlineData("4000 rpm", new[] { 4000.0 })]
    [InlineData("2500; 1000; 1000", new[] { 1000.0, 2500.0 })]
    [InlineData("1000..2000:500", new[] { 1000.0, 1500.0, 2000.0 })]
    [InlineData("1000..2100:500", new[] { 1000.0, 1500.0, 2000.0 })]
    [InlineData("850,5", new[] { 850.5 })]
    [InlineData("850.5", new[] { 850.5 })]
    public void Speeds_are_read_as_typed(string text, double[] expected)
    {
        var read = NumberList.Speeds.Read(text);

        Assert.True(read.Good, read.Complaint);
        Assert.Equal(expected, read.Value, (a, b) => Math.Abs(a - b) < 1e-9);
    }

    [Theory]
    [InlineData("12,5", 12.5)]
    [InlineData("12.5°", 12.5)]
    [InlineData("12.5 deg", 12.5)]
    public void Openings_are_read_with_comma_or_point_and_with_or_without_the_sign(string text, double expected)
    {
        var complaint = NumberList.Openings.ReadOne(text, out var degrees);

        Assert.Null(complaint);
        Assert.Equal(expected, degrees, 9);
    }

    [Fact]
    public void Range_without_a_step_has_as_many_speeds_as_the_usual_map()
    {
        var read = NumberList.Speeds.Read("600..6600");

        Assert.Equal(24, read.Value!.Count);
        Assert.Equal(6600, read.Value[^1], 9);
    }

    [Fact]
    public void Whatever_is_typed_gives_finite_rising_numbers_or_a_complaint()
    {
        var scraps = Gen.OneOf<string>("1", "4000", "..", ":", ";", ",", ".", "-", "e", "9", " ", "rpm", "°", "∞", "NaN", "0", "\u2212", "1e308");
        scraps.Array[0, 8].Select(string.Concat).Sample(text =>
        {
            var read = NumberList.Speeds.Read(text);
            return read.Good
                ? read.Value.Count > 0 && read.Value.All(double.IsFinite) && read.Value.SequenceEqual(read.Value.Distinct().Order())
                : read.Complaint.Contains("--rpm", StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Culture_of_the_machine_changes_nothing()
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");

        var read = NumberList.Speeds.Read("1000.5; 1000,5");

        CultureInfo.CurrentCulture = before;
        Assert.Equal([1000.5], read.Value);
    }
}
