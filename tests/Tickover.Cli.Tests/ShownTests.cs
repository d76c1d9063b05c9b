namespace Tickover.Cli.Tests;

public sealed class ShownTests
{
    [Theory]
    [InlineData("λ 0.90 at 4000 rpm", "λ 0.90 at 4000 rpm", true)]
    [InlineData("λ 0.90 at 4000 rpm", "λ 0.91 at 4000 rpm", true)]
    [InlineData("λ 0.90 at 4000 rpm", "λ 0.92 at 4000 rpm", false)]
    [InlineData("λ 0.90 at 4000 rpm", "λ 0.90 at 4002 rpm", false)]
    [InlineData(" 0.95+", " 0.94 ", true)]
    [InlineData("lean 0.90", "rich 0.90", false)]
    [InlineData("lean", null, false)]
    public void Lines_are_alike_up_to_one_in_the_last_digit(string? expected, string? actual, bool alike) =>
        Assert.Equal(alike, Shown.Alike(expected, actual));
}
