using System.Globalization;
using Tickover.Physics.Walls;

namespace Tickover.Bench.Pits;

/// <summary>How often the band of the deepest pit not read holds the deepest pit that was there.</summary>
internal static class WallStudy
{
    private const int Tanks = 2000;
    private const int Widths = 200;
    private const double Step = 0.01;

    private static readonly (int Read, int Not)[] Surveys = [(3, 20), (5, 20), (8, 40), (15, 60), (30, 100)];

    internal static int Run()
    {
        PitLaw[] laws = [PitLaw.Gumbel, PitLaw.Exponential, PitLaw.Weibull, PitLaw.LogNormal, PitLaw.Patchy];
        Console.WriteLine("| Pits | patches read, not read | in the band | deeper than it | shallower | 95 % point over truth, median | one likeliest pair: in its band |");
        Console.WriteLine("|---|--:|--:|--:|--:|--:|--:|");
        foreach (var law in laws)
        {
            foreach (var (read, not) in Surveys)
            {
                Console.WriteLine(Row(law, read, not));
            }
        }

        Console.WriteLine();
        Console.WriteLine(Censored());
        return 0;
    }

    private static string Row(PitLaw law, int read, int not)
    {
        var dice = new PitDice(1);
        int shallower = 0, deeper = 0, plugged = 0;
        var over = new List<double>();
        for (var i = 0; i < Tanks; i++)
        {
            var tank = Tank(law, read + not, dice);
            var (sample, truth) = (Sample(tank[..read]), tank[read..].Max());
            var posterior = PitPosterior.Of(sample)!;
            // The truth's own chance tells which side of the band's ends it lies on; looking for the ends takes fifty times as long.
            var below = posterior.Below(truth, not);
            shallower += below < 0.05 ? 1 : 0;
            deeper += below > 0.95 ? 1 : 0;
            plugged += GumbelEstimate.MaximumLikelihood(sample.DepthsMetres) is { } pair && pair.Below(truth, not) is >= 0.05 and <= 0.95 ? 1 : 0;
            if (i < Widths)
            {
                over.Add(posterior.Deepest(not).HighMetres / truth);
            }
        }

        over.Sort();
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {law.Name} | {read}, {not} | {100.0 * (Tanks - shallower - deeper) / Tanks:F1} % | {100.0 * deeper / Tanks:F1} % | {100.0 * shallower / Tanks:F1} % | {over[Widths / 2]:F2} | {100.0 * plugged / Tanks:F1} % |");
    }

    // Patches too shallow for the gauge are the usual kind of missing reading.
    private static string Censored()
    {
        const int read = 20, not = 60;
        var dice = new PitDice(2);
        int inside = 0, left = 0, dropped = 0, used = 0;
        for (var i = 0; i < Tanks; i++)
        {
            var tank = Tank(PitLaw.Gumbel, read + not, dice);
            var (seen, small) = (tank[..read].Where(d => d >= 0.35).ToArray(), tank[..read].Count(d => d < 0.35));
            if (seen.Length < PitSample.FewestDepths)
            {
                continue;
            }

            used++;
            left += small;
            var truth = tank[read..].Max();
            var whole = PitPosterior.Of(Sample(seen) with { ShallowerThanMetres = [.. Enumerable.Repeat(0.35, small)] })!;
            inside += whole.Below(truth, not) is >= 0.05 and <= 0.95 ? 1 : 0;
            dropped += PitPosterior.Of(Sample(seen))!.Below(truth, not) is >= 0.05 and <= 0.95 ? 1 : 0;
        }

        return string.Create(
            CultureInfo.InvariantCulture,
            $"{used} tanks, {(double)left / used:F1} of {read} patches too shallow to measure: in the band {100.0 * inside / used:F1} %, with those patches left out instead {100.0 * dropped / used:F1} %.");
    }

    private static PitSample Sample(double[] depths) => new()
    {
        DepthsMetres = [.. depths.Select(d => Math.Round(d / Step) * Step)],
        StepMetres = Step,
    };

    private static double[] Tank(PitLaw law, int patches, PitDice dice) => [.. Enumerable.Range(0, patches).Select(_ => law.Deepest(dice))];
}
