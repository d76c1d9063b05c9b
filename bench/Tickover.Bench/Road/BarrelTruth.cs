using Tickover.Physics.Breathing;
using Tickover.Physics.Metering;
using Tickover.Workshop.Calibration;
using Tickover.Workshop.Mixture;

namespace Tickover.Bench.Road;

/// <summary>Air and fuel of one kind of barrel as they really are.</summary>
internal sealed class BarrelTruth(SurveyModel model, SurveyGrid grid, TruthTraits traits, int bank, (double Main, double Idle) bores)
{
    private const double UsualReynolds = 3000;
    private const double WideFrom = 35;                   // degrees; stand-off comes in to here plus the next
    private const double WideOver = 30;
    private static readonly (double Least, double Most) Flows01 = (-2.5, 0.2);    // logarithm of air over the most there is
    private static readonly FuelSideSettings Quick = new() { StepsPerCycle = 120 };

    /// <summary>Air and fuel, kg/s, [speed, throttle].</summary>
    internal (double[,] Air, double[,] Fuel) Flows(AirSide side, int inGroup, BarrelSpec spec)
    {
        var (figures, own) = ((double[])traits.Figures.Clone(), traits.Banks[bank - 1]);
        (figures[1], figures[2], figures[6]) = (figures[1] + own.Main, figures[2] + own.Idle, figures[6] + own.Level);
        var trims = new CircuitTrims(figures);
        var barrel = trims.On(spec);
        // The gain follows the flow: solved at the least and the most it takes, and read in between.
        var (low, high) = (SignalAt(Flows01.Least), SignalAt(Flows01.Most));
        var one = Solve(side, inGroup, barrel, trims.Depression * Math.Exp(low));
        var other = low == high ? one : Solve(side, inGroup, barrel, trims.Depression * Math.Exp(high));
        var (air, fuel) = (new double[one.GetLength(0), one.GetLength(1)], new double[one.GetLength(0), one.GetLength(1)]);
        var most = MostAir(side, inGroup);
        for (var i = 0; i < air.GetLength(0); i++)
        {
            for (var j = 0; j < air.GetLength(1); j++)
            {
                var drawn = Drawn(side, inGroup, i, j);
                var part = low == high ? 0 : (SignalAt(Math.Log(Math.Max(drawn, 1e-9) / most)) - low) / (high - low);
                air[i, j] = drawn * trims.Air + Between(one[i, j].BledAirKilogramsPerSecond, other[i, j].BledAirKilogramsPerSecond, part);
                fuel[i, j] = Math.Max(1e-9, Between(Warped(one[i, j]), Warped(other[i, j]), part) * Math.Exp(Unexplained(i, j)));
            }
        }

        return (air, fuel);
    }

    private double SignalAt(double flow) => traits.Signal + traits.SignalSlope * (Math.Clamp(flow, Flows01.Least, Flows01.Most) + 1);

    private FuelPoint[,] Solve(AirSide side, int inGroup, BarrelSpec barrel, double factor) =>
        FuelSideSolver.Solve(side, inGroup, barrel, model.Fuel, Quick with { DepressionFactor = factor });

    private double Drawn(AirSide side, int inGroup, int i, int j) => side.At(i, j).AirKilogramsPerCycle[inGroup] * grid.SpeedsRpm[i] / 120;

    // of the cylinders' swept volume at the speed of peak power, so that it does not hang on the grid
    private double MostAir(AirSide side, int inGroup)
    {
        var most = 0.0;
        for (var i = 0; i < grid.SpeedsRpm.Count; i++)
        {
            most = Math.Max(most, side.At(i, grid.ThrottleDegrees.Count - 1).AirKilogramsPerCycle[inGroup]);
        }

        return most * model.RatedSpeedRpm / 120;
    }

    private double Warped(FuelPoint point)
    {
        var reynolds = Math.Tanh(Math.Log10(Math.Max(point.MainJetReynolds, 1) / UsualReynolds));
        var main = Math.Exp(traits.JetReynolds * reynolds) * Math.Pow(bores.Main, traits.MainBorePower);
        var idle = Math.Pow(bores.Idle, traits.IdleBorePower);
        return point.MainKilogramsPerSecond * main + (point.IdleKilogramsPerSecond + point.ProgressionKilogramsPerSecond) * idle + point.PumpKilogramsPerSecond;
    }

    private double Unexplained(int i, int j)
    {
        var (speed, opening) = (2 * Math.PI * grid.SpeedsRpm[i] / model.RatedSpeedRpm, 2 * Math.PI * Math.Sqrt(grid.ThrottleDegrees[j] / 90));
        var wide = Math.Clamp((grid.ThrottleDegrees[j] - WideFrom) / WideOver, 0, 1);
        var off = wide * traits.StandOff.Size * Math.Sin(traits.StandOff.Waves * speed + traits.StandOff.Phase);
        return off + traits.Remainder.Sum(r => r.Size * Math.Sin(r.Speed * speed + r.Opening * opening + r.Phase));
    }

    private static double Between(double one, double other, double part) => one + part * (other - one);
}
