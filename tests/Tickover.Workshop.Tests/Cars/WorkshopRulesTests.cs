using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Tests.Cars;

public class WorkshopRulesTests
{
    [Fact]
    public void The_handbook_example_of_a_choke_is_met()
    {
        // Common practice: 0.33 l a cylinder at 6500 rpm takes 29 mm; 20 x sqrt(2.145) = 29.29.
        Assert.Equal(29e-3, WorkshopRules.ChokeMetres(0.33e-3, 6500 * Math.PI / 30), 0.5e-3);
    }

    [Fact]
    public void A_choke_of_30_takes_a_main_jet_of_120_and_a_corrector_of_175()
    {
        Assert.Equal(1.20e-3, WorkshopRules.MainJetMetres(30e-3), 1e-9);
        Assert.Equal(1.75e-3, WorkshopRules.AirCorrectorMetres(1.20e-3), 1e-9);
    }

    [Fact]
    public void A_Spanish_workshop_texts_example_of_a_shared_barrel_is_met()
    {
        // Common practice: choke 36 mm, main jet five hundredths of it, 1.80 mm.
        Assert.Equal(1.80e-3, WorkshopRules.SharedMainJetMetres(36e-3), 1e-9);
    }

    [Theory]
    [InlineData(1, 4, 1.0)] // one barrel, cylinders draw in turn
    [InlineData(2, 4, 0.8485)] // 1.2 x sqrt(1/2)
    [InlineData(2, 8, 1.2)] // 1.2 x sqrt(2/2)
    public void A_shared_choke_follows_the_cylinders_that_draw_at_once(int barrels, int cylinders, double factor) =>
        Assert.Equal(factor, WorkshopRules.SharedChokeFactor(barrels, cylinders), 1e-4);
}
