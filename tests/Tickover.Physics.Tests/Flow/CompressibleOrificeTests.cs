using CsCheck;
using Tickover.Physics.Flow;

namespace Tickover.Physics.Tests.Flow;

public sealed class CompressibleOrificeTests
{
    private static readonly CompressibleOrifice SquareCentimetre = new() { EffectiveAreaSquareMetres = 1e-4 };

    private static readonly Gen<GasState> AnyState = Gen.Select(Gen.Double[1e3, 3e5], Gen.Double[220, 1_500], (p, t) => new GasState(p, t));

    [Fact]
    public void A_square_centimetre_at_nine_tenths_by_hand()
    {
        // 1e-4 · 101325 / sqrt(287.05287 · 300) · 0.422581 = 1e-4 · 345.28 · 0.422581
        var flow = SquareCentimetre.MassFlow(new GasState(101_325, 300), new GasState(0.9 * 101_325, 300));

        Assert.Equal(0.014591, flow, 6);
    }

    [Fact]
    public void Nothing_flows_between_equal_pressures() =>
        Gen.Select(AnyState, Gen.Double[220, 1_500]).Sample((state, other) =>
            SquareCentimetre.MassFlow(state, state with { TemperatureKelvin = other }) == 0);

    [Fact]
    public void Nothing_flows_between_vacua() => Assert.Equal(0, SquareCentimetre.MassFlow(default, default));

    [Fact]
    public void Nothing_flows_through_a_shut_hole() =>
        Assert.Equal(0, (SquareCentimetre with { EffectiveAreaSquareMetres = 0 }).MassFlow(new GasState(1e5, 300), default));

    [Fact]
    public void Turned_round_the_flow_turns_round() =>
        Gen.Select(AnyState, AnyState).Sample((one, other) =>
            Math.Abs(SquareCentimetre.MassFlow(one, other) + SquareCentimetre.MassFlow(other, one))
                <= 1e-12 * Math.Abs(SquareCentimetre.MassFlow(one, other)));

    [Fact]
    public void More_pressure_behind_never_gives_less_flow() =>
        Gen.Select(AnyState, AnyState, Gen.Double[0, 1e4]).Sample((behind, ahead, more) =>
            SquareCentimetre.MassFlow(behind with { PressurePascals = behind.PressurePascals + more }, ahead)
                >= SquareCentimetre.MassFlow(behind, ahead) - 1e-12);

    [Fact]
    public void Close_to_rest_flow_rises_with_the_drop() =>
        Gen.Select(Gen.Double[-5, 5], Gen.Double[0.01, 1], Gen.Double[220, 1_500], Gen.Double[220, 1_500]).Sample((drop, more, t, other) =>
            SquareCentimetre.MassFlow(new GasState(1e5 + drop + more, t), new GasState(1e5, other))
                > SquareCentimetre.MassFlow(new GasState(1e5 + drop, t), new GasState(1e5, other)));

    [Fact]
    public void Flow_is_finite_for_any_finite_state() =>
        Gen.Select(Gen.Double[-1e9, 1e9], Gen.Double[-1e9, 1e9], Gen.Double[-100, 1e5], Gen.Double[-100, 1e5]).Sample((p, q, t, u) =>
            double.IsFinite(SquareCentimetre.MassFlow(new GasState(p, t), new GasState(q, u))));

    [Theory]
    [InlineData(0)]
    [InlineData(1e-5)]
    [InlineData(-1e-5)]
    [InlineData(0.471718)]
    public void Slope_is_finite_and_continuous_where_the_law_changes(double drop) // rest, both ends of the smoothed width, sonic
    {
        const double step = 1e-4; // Pa; well inside the smoothed width of 1 Pa
        const double pressure = 1e5;
        double Flow(double extra)
        {
            var low = pressure * (1 - Math.Abs(drop)) + (drop >= 0 ? -extra : extra);
            var (high, less) = (new GasState(pressure, 300), new GasState(low, 800));
            return drop >= 0 ? SquareCentimetre.MassFlow(high, less) : SquareCentimetre.MassFlow(less, high);
        }

        var before = (Flow(0) - Flow(-step)) / step;
        var after = (Flow(step) - Flow(0)) / step;

        Assert.True(double.IsFinite(before) && double.IsFinite(after));
        Assert.Equal(before, after, 1e-3 * Math.Max(Math.Abs(before), 1e-8));
    }

    [Fact]
    public void Outside_the_smoothed_width_it_is_the_plain_law() =>
        Gen.Double[1.001e-5, 0.9].Sample(drop =>
        {
            var flow = SquareCentimetre.MassFlow(new GasState(1e5, 300), new GasState(1e5 * (1 - drop), 900));
            var plain = 1e-4 * 1e5 / Math.Sqrt(IdealGas.Air.GasConstant * 300) * IsentropicFlow.Psi(1 - drop, 1.4);
            return Math.Abs(flow - plain) <= 1e-9 * plain;
        });

    [Theory]
    [InlineData(1e5, 6e4, false)]
    [InlineData(1e5, 5e4, true)]
    [InlineData(5e4, 1e5, true)]
    [InlineData(0, 0, false)]
    public void It_says_when_the_throat_is_sonic(double one, double other, bool choked) =>
        Assert.Equal(choked, SquareCentimetre.IsChoked(new GasState(one, 300), new GasState(other, 300)));

    [Theory]
    [InlineData(0, 1.4)]
    [InlineData(287, 1)]
    [InlineData(double.NaN, 1.4)]
    public void A_gas_that_cannot_be_is_refused(double r, double gamma) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new IdealGas(r, gamma));
}
