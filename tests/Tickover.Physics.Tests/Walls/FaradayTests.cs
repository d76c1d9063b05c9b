using CsCheck;
using Tickover.Physics.Walls;

namespace Tickover.Physics.Tests.Walls;

public sealed class FaradayTests
{
    [Fact]
    public void A_microampere_a_square_centimetre_takes_11_6_micrometres_of_iron_a_year()
    {
        // 0.01 A/m² × 27.9225e-3 kg/mol / (96485 C/mol × 7870 kg/m³) = 3.677e-13 m/s, × 31.56e6 s = 11.60 µm.
        var rate = Faraday.PenetrationRate(0.01, 27.9225e-3, 7870) * WallsConstants.SecondsPerYear;

        Assert.Equal(11.60e-6, rate, 0.01e-6);
    }

    [Fact]
    public void Mass_and_penetration_agree() => Gen.Select(Gen.Double[0.001, 10], Gen.Double[1, 1e8], Gen.Double[0.005, 0.1], Gen.Double[1000, 12000])
        .Sample((i, t, w, rho) =>
        {
            var byMass = Faraday.RateFromMass(Faraday.MassLoss(i, t, w), rho, 1, t);
            return Math.Abs(byMass / Faraday.PenetrationRate(i, w, rho) - 1) < 1e-12;
        });

    [Fact]
    public void Oxygen_through_half_a_millimetre_of_still_water_carries_39_microamperes_a_square_centimetre()
    {
        // 4 × 96485 × 2e-9 × 0.25 / 0.5e-3 = 0.386 A/m².
        Assert.Equal(0.386, Faraday.OxygenLimit(0.5e-3), 0.001);
    }

    [Fact]
    public void Equivalent_weight_of_a_single_element_is_its_weight_over_its_valence() => Gen.Select(Gen.Double[0.005, 0.2], Gen.Int[1, 4])
        .Sample((weight, valence) => Math.Abs(EquivalentWeight.Of([new AlloyElement(1, weight, valence)]) - weight / valence) < 1e-15);

    [Fact]
    public void Nothing_that_has_no_size_is_taken()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Faraday.PenetrationRate(-1, 0.028, 7870));
        Assert.Throws<ArgumentOutOfRangeException>(() => Faraday.PenetrationRate(1, 0.028, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Faraday.OxygenLimit(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => EquivalentWeight.Of([]));
    }
}
