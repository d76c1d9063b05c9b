using Tickover.Physics.Exhaust;

namespace Tickover.Workshop.Exhaust;

/// <summary>What a good analyser may be off by, and what that does to λ.</summary>
/// <remarks>Permitted errors of class 1 in service, OIML R 99, from memory: the greater of a fixed and a relative one. The humble are worse.</remarks>
internal static class AnalyserErrors
{
    private const double Relative = 0.05;
    private const double Monoxide = 0.0006;
    private const double Dioxide = 0.005;
    private const double Oxygen = 0.001;
    private const double Hydrocarbons = 12e-6;

    /// <summary>Half the band of λ: the root of the sum of squares of what each gas does to it.</summary>
    internal static double LambdaBand(ExhaustSample sample, ExhaustFuel fuel)
    {
        var middle = LambdaFormula.Of(sample, fuel).Value;
        ExhaustSample[] shifted =
        [
            sample with { CarbonMonoxide = sample.CarbonMonoxide + Greater(Monoxide, sample.CarbonMonoxide) },
            sample with { CarbonDioxide = sample.CarbonDioxide + Greater(Dioxide, sample.CarbonDioxide) },
            sample with { Oxygen = sample.Oxygen + Greater(Oxygen, sample.Oxygen) },
            sample with { Hydrocarbons = sample.Hydrocarbons + Greater(Hydrocarbons, sample.Hydrocarbons) },
        ];
        return Math.Sqrt(shifted.Sum(s => Math.Pow(LambdaFormula.Of(s, fuel).Value - middle, 2)));
    }

    private static double Greater(double absolute, double value) => Math.Max(absolute, Relative * Math.Abs(value));
}
