using System.Runtime.Intrinsics;
using CsCheck;
using Tickover.Physics.Flow;
using Tickover.Physics.Fuels;
using Tickover.Physics.Metering;

namespace Tickover.Physics.Tests.Metering;

/// <summary>The jet of four lanes is the jet of the flow pages.</summary>
public sealed class JetLanesTests
{
    private const double Close = 1e-9;

    private static readonly FuelProperties Petrol = new()
    {
        DensityKilogramsPerCubicMetre = 745,
        ViscosityPascalSeconds = 0.50e-3,
        StoichiometricRatio = 14.572,
    };

    private static readonly Gen<(double Diameter, double Length, double Drop)> AnyFlow =
        Gen.Select(Gen.Double[0.3e-3, 2.5e-3], Gen.Double[2, 10], Gen.Double[1, 3e4]);

    [Fact]
    public void Flow_at_a_drop_is_that_of_the_scalar_law() =>
        AnyFlow.Sample(c =>
        {
            var lanes = new JetLanes(c.Diameter, c.Length, Petrol).Flow(Vector256.Create(c.Drop)).Flow[2];
            var scalar = JetFlow.At(c.Diameter, c.Length, c.Drop, Petrol).MassFlowKilogramsPerSecond;

            return Math.Abs(lanes / scalar - 1) < Close;
        });

    [Fact]
    public void Drop_at_a_flow_undoes_it_either_way() =>
        AnyFlow.Sample(c =>
        {
            var jet = new JetLanes(c.Diameter, c.Length, Petrol);
            var flow = Vector256.Create(JetFlow.At(c.Diameter, c.Length, c.Drop, Petrol).MassFlowKilogramsPerSecond);
            var ideal = Vector256<double>.Zero;
            var back = ideal;
            for (var k = 0; k < 30; k++)
            {
                jet.Drop(flow, ref ideal);
                jet.Drop(-flow, ref back);
            }

            return Math.Abs(jet.Drop(flow, ref ideal).Drop[1] / c.Drop - 1) < 1e-6
                && Math.Abs(jet.Drop(-flow, ref back).Drop[1] / c.Drop + 1) < 1e-6;
        });
}
