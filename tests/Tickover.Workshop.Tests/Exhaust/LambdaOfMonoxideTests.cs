using Tickover.Workshop.Exhaust;

namespace Tickover.Workshop.Tests.Exhaust;

/// <summary>λ from CO alone against the trade's cross-check table (water-gas equilibrium, constant 3.5, H/C 1.86).</summary>
public sealed class LambdaOfMonoxideTests
{
    [Theory]
    [InlineData(7.6, 0.80)]
    [InlineData(5.6, 0.85)]
    [InlineData(3.7, 0.90)]
    [InlineData(2.9, 0.92)]
    [InlineData(1.8, 0.95)]
    public void Follows_the_table_of_the_trade(double percent, double lambda) => Assert.Equal(lambda, LambdaOfMonoxide.Of(percent)!.Value, 0.006);

    [Fact]
    public void Says_no_more_than_not_rich_where_there_is_hardly_any() => Assert.Equal(1, LambdaOfMonoxide.Of(0.1));

    [Theory]
    [InlineData(-0.1)]
    [InlineData(14)]
    [InlineData(double.NaN)]
    public void Refuses_what_is_no_CO_of_a_petrol_engine(double percent) => Assert.Null(LambdaOfMonoxide.Of(percent));
}
