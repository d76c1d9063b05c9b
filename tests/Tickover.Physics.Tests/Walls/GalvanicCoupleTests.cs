using Tickover.Physics.Walls;

namespace Tickover.Physics.Tests.Walls;

public sealed class GalvanicCoupleTests
{
    [Fact]
    public void Every_metal_has_its_figures_in_its_own_place()
    {
        Assert.Equal(Enum.GetValues<Metal>(), MetalTable.All.Select(m => m.Metal));
        Assert.All(MetalTable.All, m => Assert.True(m.EquivalentWeightKilogramsPerMole > 0 && m.DensityKilogramsPerCubicMetre > 0 && m.GentleStressPascals > 0));
    }

    [Fact]
    public void Aluminium_on_brass_is_eaten_and_not_let_pass_in_a_garage()
    {
        var couple = GalvanicCouple.Of(Metal.Aluminium, Metal.Brass, WetSurroundings.Normal);

        Assert.Equal(0.50, couple.DifferenceVolts, 1e-12);
        Assert.True(couple.WallIsEaten);
        Assert.False(couple.IsCompatible);
    }

    [Fact]
    public void A_scratched_terne_tank_is_eaten_at_the_scratch_by_a_brass_strap()
    {
        // Bare steel 0.85 against brass 0.40; the coat alone would be 0.25.
        Assert.Equal(0.45, GalvanicCouple.Of(Metal.TerneSteel, Metal.Brass, WetSurroundings.Harsh).DifferenceVolts, 1e-12);
    }

    [Fact]
    public void A_zinc_plated_strap_is_eaten_first_only_while_its_zinc_lasts()
    {
        var couple = GalvanicCouple.Of(Metal.Stainless, Metal.GalvanisedSteel, WetSurroundings.Harsh);

        Assert.False(couple.WallIsEaten);
        Assert.Equal(-0.70, couple.DifferenceVolts, 1e-12);
    }

    [Fact]
    public void The_same_metal_is_always_let_pass() => Assert.All(
        MetalTable.All.Where(m => !m.IsCoated),
        m => Assert.True(GalvanicCouple.Of(m.Metal, m.Metal, WetSurroundings.Harsh).IsCompatible));

    [Fact]
    public void Harsher_surroundings_let_less_pass()
    {
        Assert.True(GalvanicCouple.Limit(WetSurroundings.Harsh) < GalvanicCouple.Limit(WetSurroundings.Normal));
        Assert.True(GalvanicCouple.Limit(WetSurroundings.Normal) < GalvanicCouple.Limit(WetSurroundings.Controlled));
    }

    [Fact]
    public void A_small_eaten_area_beside_a_large_noble_one_goes_fast()
    {
        Assert.Equal(1, GalvanicCouple.AreaEffect(0, 0.01), 1e-15);
        Assert.Equal(101, GalvanicCouple.AreaEffect(1, 0.01), 1e-9);
    }
}
