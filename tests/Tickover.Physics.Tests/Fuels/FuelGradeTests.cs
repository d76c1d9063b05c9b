using CsCheck;
using Tickover.Physics.Fuels;

namespace Tickover.Physics.Tests.Fuels;

public sealed class FuelGradeTests
{
    [Theory]
    [InlineData("E5", "E5")]
    [InlineData(" e10 ", "E10")]
    [InlineData("E7.5", "E7.5")]
    [InlineData("E100", "E100")]
    [InlineData("petrol", "petrol")]
    [InlineData("Iso-Octane", "iso-octane")]
    [InlineData("mtbe", "MTBE")]
    [InlineData("ethanol", "ethanol")]
    [InlineData("ETBE", "ETBE")]
    public void A_grade_is_read_however_it_is_written(string text, string name)
    {
        Assert.True(FuelGrade.TryParse(text, out var grade));
        Assert.Equal(name, grade.Name);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("E")]
    [InlineData("E101")]
    [InlineData("E-5")]
    [InlineData("E5,5")]
    [InlineData("E1e1")]
    [InlineData("ENaN")]
    [InlineData("diesel")]
    public void What_is_no_grade_is_refused_without_throwing(string? text)
    {
        Assert.False(FuelGrade.TryParse(text, out var grade));
        Assert.Null(grade);
    }

    [Fact]
    public void Any_text_is_either_read_or_refused() =>
        Gen.String.Sample(text => FuelGrade.TryParse(text, out var grade) == grade is not null);

    [Fact]
    public void What_may_be_written_is_listed() =>
        Assert.Equal("E0 to E100, petrol, iso-octane, n-heptane, toluene, benzene, ethanol, methanol, MTBE, ETBE", FuelGrade.Allowed);

    [Fact]
    public void E0_is_petrol_and_E100_is_ethanol()
    {
        Assert.Equal(FuelGrade.Pure(FuelComponents.Petrol).At(300), FuelGrade.Ethanol(0).At(300));
        Assert.Equal(FuelGrade.Pure(FuelComponents.Ethanol).At(300), FuelGrade.Ethanol(100).At(300));
    }

    [Fact]
    public void More_ethanol_needs_less_air_and_is_heavier_and_thicker() =>
        Gen.Select(Gen.Double[0, 99], Gen.Double[255, 335]).Sample((percent, t) =>
        {
            var less = FuelGrade.Ethanol(percent).At(t);
            var more = FuelGrade.Ethanol(percent + 1).At(t);
            return more.StoichiometricRatio < less.StoichiometricRatio
                && more.DensityKilogramsPerCubicMetre > less.DensityKilogramsPerCubicMetre
                && more.ViscosityPascalSeconds > less.ViscosityPascalSeconds;
        });
}
