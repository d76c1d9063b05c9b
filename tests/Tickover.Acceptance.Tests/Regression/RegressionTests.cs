using System.Globalization;
using Tickover.Physics.Estimation;

namespace Tickover.Acceptance.Tests.Regression;

/// <summary>NIST/ITL StRD, nonlinear regression: data, starts and certified values are theirs.</summary>
public sealed class RegressionTests
{
    private const double Digits = 6;
    private const double RoundingOfTheSum = 1e-9;         // eleven digits are certified
    private static readonly (string Set, int Start)[] Elsewhere = [("BoxBOD", 1), ("MGH10", 1)];

    // The sum of Lanczos1 is what rounding its data to fourteen digits leaves, 1e-25: less than double precision can sum.
    private const string BeyondDoubles = "Lanczos1";

    public static TheoryData<string, int> Runs() =>
        [.. RegressionRun.All.Where(r => !Elsewhere.Contains((r.Set.Name, r.Start))).Select(r => (r.Set.Name, r.Start))];

    public static TheoryData<string> Sets() => [.. RegressionSet.All.Select(s => s.Name)];

    [Theory]
    [MemberData(nameof(Sets))]
    public void The_data_give_the_certified_sum_at_the_certified_parameters(string name)
    {
        var set = RegressionSet.All.Single(s => string.Equals(s.Name, name, StringComparison.Ordinal));

        var sum = RegressionModels.Residuals(set, [.. set.Certified]).Sum(r => r * r);

        // eleven digits of the parameters leave the sum of Lanczos1 open
        Assert.InRange(sum, set.SumOfSquares * (1 - RoundingOfTheSum), name is BeyondDoubles ? 1e-20 : set.SumOfSquares * (1 + RoundingOfTheSum));
    }

    [Theory]
    [MemberData(nameof(Runs))]
    public void The_certified_parameters_are_found_to_six_digits(string name, int start)
    {
        var run = Of(name, start);

        Assert.True(run.Digits >= Digits, string.Create(CultureInfo.InvariantCulture, $"{name} from start {start}: {run.Digits:F1} digits; {run.Found.Ending} after {run.Found.Steps} steps"));
        Assert.True(name is BeyondDoubles ? run.Found.Cost < 1e-24 : run.DigitsOfSum >= 9, string.Create(CultureInfo.InvariantCulture, $"{name} from start {start}: sum of squares {2 * run.Found.Cost}, certified {run.Set.SumOfSquares}"));
    }

    [Fact]
    public void BoxBOD_from_start_one_ends_on_the_plateau_where_the_exponential_is_nothing()
    {
        // b₂ runs off, the curve becomes a flat line, and no direction leads back: the mean of the six is the best line, 172.5
        var run = Of("BoxBOD", 1);

        Assert.Equal(172.5, run.Found.Parameters[0], 6);
        Assert.True(run.Found.Parameters[1] > 30);
        Assert.Equal(9771.5, 2 * run.Found.Cost, 6);
    }

    [Fact]
    public void MGH10_from_start_one_creeps_along_a_valley_and_says_that_the_steps_ran_out()
    {
        var run = Of("MGH10", 1);

        Assert.Equal(EstimateEnding.OutOfSteps, run.Found.Ending);
        Assert.InRange(2 * run.Found.Cost, 1.4e6, 1.5e6);   // certified: 87.9
    }

    private static RegressionRun Of(string name, int start) =>
        RegressionRun.All.Single(r => string.Equals(r.Set.Name, name, StringComparison.Ordinal) && r.Start == start);
}
