using CsCheck;
using Tickover.Physics.Flow;

namespace Tickover.Physics.Tests.Flow;

public sealed class OrificePlateTests
{
    [Fact]
    public void Without_a_drop_nothing_expands() => Assert.Equal(1, OrificePlate.Expansibility(0.5, 1, 1.4));

    [Fact]
    public void A_plate_loses_less_to_expansion_than_a_rounded_choke() =>
        Gen.Select(Gen.Double[0.1, 0.6], Gen.Double[0.75, 0.999]).Sample((beta, ratio) =>
            OrificePlate.Expansibility(beta, ratio, 1.4) > IsentropicFlow.Phi(ratio, 1.4));

    [Theory]
    [InlineData(0.5, 0.9, ValidityKind.Inside)]
    [InlineData(0.8, 0.9, ValidityKind.Outside)]
    [InlineData(0.5, 0.7, ValidityKind.Outside)]
    public void Validity_is_the_standards(double beta, double ratio, ValidityKind expected) =>
        Assert.Equal(expected, OrificePlate.ValidityAt(beta, ratio).Kind);
}
