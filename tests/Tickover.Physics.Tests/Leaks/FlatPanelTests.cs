using CsCheck;
using Tickover.Physics.Leaks;

namespace Tickover.Physics.Tests.Leaks;

public sealed class FlatPanelTests
{
    private static readonly FlatPanel Old = new() { ShortMetres = 0.30, LongMetres = 0.30, ThicknessMetres = 1.2e-3, StiffnessPascals = 70e9 };

    [Fact]
    public void A_soft_aluminium_panel_bears_no_type_test()
    {
        // 0.3078 × 20,000 Pa × (0.3/0.0012)² = 385 MPa; 0.0138 × 20,000 × 0.3⁴/(70e9 × 0.0012³) = 18.5 mm.
        Assert.Equal(385e6, Old.Stress(20_000, PanelEdge.Clamped), 1e6);
        Assert.Equal(18.5e-3, Old.Deflection(20_000, PanelEdge.Clamped), 0.1e-3);
        Assert.Equal(1_819, Old.PressureAtStress(35e6), 1.0);
        Assert.Equal(649, Old.BreathingPressure(PanelEdge.Clamped), 1.0);
    }

    [Theory]
    [InlineData(3, 0.7134, 0.1335)]
    [InlineData(4, 0.7410, 0.1400)]
    [InlineData(5, 0.7476, 0.1417)]
    public void Long_supported_panels_are_within_two_parts_in_a_hundred_of_the_table(double aspect, double stress, double deflection)
    {
        // Roark, 7th ed., table 11.4, case 1a, from memory.
        var panel = new FlatPanel { ShortMetres = 1, LongMetres = aspect, ThicknessMetres = 1, StiffnessPascals = 1 };

        Assert.Equal(stress, panel.Stress(1, PanelEdge.Supported), 0.02 * stress);
        Assert.Equal(deflection, panel.Deflection(1, PanelEdge.Supported), 0.025 * deflection);
    }

    [Fact]
    public void Longer_panels_bend_more_and_thicker_ones_less() => Gen.Select(Gen.Double[1, 6], Gen.Double[0.5e-3, 3e-3]).Sample((aspect, thickness) =>
    {
        var panel = Old with { LongMetres = 0.30 * aspect, ThicknessMetres = thickness };
        var (longer, thicker) = (panel with { LongMetres = panel.LongMetres * 1.1 }, panel with { ThicknessMetres = thickness * 1.1 });
        return longer.Deflection(1, PanelEdge.Clamped) >= panel.Deflection(1, PanelEdge.Clamped)
            && longer.Stress(1, PanelEdge.Supported) >= panel.Stress(1, PanelEdge.Supported)
            && thicker.PressureAtStress(35e6) > panel.PressureAtStress(35e6);
    });

    [Fact]
    public void A_panel_of_no_size_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => (Old with { LongMetres = 0.2 }).Stress(1, PanelEdge.Clamped));
}
