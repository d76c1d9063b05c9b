using Tickover.Workshop.Calibration;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Bench.Road;

/// <summary>The mixture a virtual car really has with a set of jets: the model's circuits with other figures, then other laws on top.</summary>
internal sealed class TruthMap
{
    private const double FadeDegrees = 15;
    private const double LeastEquivalence = 1.0 / 3;
    private readonly double[,,] _equivalence;

    private TruthMap(SurveyGrid grid, double[,,] equivalence) => (Grid, _equivalence) = (grid, equivalence);

    internal SurveyGrid Grid { get; }

    /// <summary>λ anywhere.</summary>
    /// <param name="bank">Bank from 1; 0 for all together.</param>
    /// <param name="rpm">Speed, rpm.</param>
    /// <param name="degrees">True opening from seated, degrees.</param>
    internal double Lambda(int bank, double rpm, double degrees) => Math.Exp(MapReading.LogLambda(_equivalence, Grid, bank, rpm, degrees));

    /// <summary>λ at a point of the grid.</summary>
    internal double At(int bank, int i, int j) => 1 / _equivalence[bank, i, j];

    /// <summary>Computes it.</summary>
    /// <param name="car">The car as described, with the jets fitted.</param>
    /// <param name="sample">The same car as the sample has it: what its jets' bores are told from.</param>
    /// <param name="traits">How it differs.</param>
    /// <param name="air">Air sides already solved.</param>
    /// <param name="grid">Where; null for the default.</param>
    internal static TruthMap Of(Car car, Car sample, TruthTraits traits, SurveyAir air, SurveyGrid? grid = null)
    {
        var (model, over) = (SurveyModel.Of(car), grid ?? MixtureSurvey.DefaultGrid(car));
        var banks = traits.Banks.Length;
        var (airs, fuels) = (new double[banks + 1, over.SpeedsRpm.Count, over.ThrottleDegrees.Count], new double[banks + 1, over.SpeedsRpm.Count, over.ThrottleDegrees.Count]);
        var known = new Dictionary<(int, string), (double[,] Air, double[,] Fuel)>();
        foreach (var barrel in car.Barrels)
        {
            var spec = model.Engine.Barrels[barrel.Number - 1];
            var group = model.Engine.Groups.First(g => g.Barrels.Contains(barrel.Number - 1));
            var bank = car.Banks[barrel.Cylinders[0] - 1];
            var key = (bank, AirKey.Of(model.Engine, group, model.Ambient, over) + AirKey.Of(barrel, spec));
            if (!known.TryGetValue(key, out var flows))
            {
                var barrelTruth = new BarrelTruth(model, over, traits, bank, Bores(car, sample));
                known.Add(key, flows = barrelTruth.Flows(air.Get(model, group, over, CancellationToken.None), group.Barrels.ToList().IndexOf(barrel.Number - 1), spec));
            }

            Add(airs, bank, flows.Air);
            Add(fuels, bank, flows.Fuel);
        }

        return new TruthMap(over, Mixed(airs, fuels, model.Fuel.StoichiometricRatio / model.Ambient.DryAirFraction, (over, traits)));
    }

    private static (double Main, double Idle) Bores(Car car, Car sample) => (Ratio(car, sample, "barrel.mainJet"), Ratio(car, sample, "barrel.idleJet"));

    private static double Ratio(Car car, Car sample, string key) => car.Barrels[0].Figures.Si(key) / sample.Barrels[0].Figures.Si(key);

    private static double[,,] Mixed(double[,,] airs, double[,,] fuels, double lean, (SurveyGrid Grid, TruthTraits Traits) with)
    {
        var mixed = new double[airs.GetLength(0), airs.GetLength(1), airs.GetLength(2)];
        for (var i = 0; i < mixed.GetLength(1); i++)
        {
            for (var j = 0; j < mixed.GetLength(2); j++)
            {
                var all = lean * fuels[0, i, j] / airs[0, i, j];
                var leak = with.Traits.CrossTalk * Math.Exp(-with.Grid.ThrottleDegrees[j] / FadeDegrees);
                for (var b = 0; b < mixed.GetLength(0); b++)
                {
                    mixed[b, i, j] = Math.Max(LeastEquivalence, (1 - leak) * lean * fuels[b, i, j] / airs[b, i, j] + leak * all);
                }
            }
        }

        return mixed;
    }

    private static void Add(double[,,] map, int bank, double[,] flows)
    {
        for (var i = 0; i < flows.GetLength(0); i++)
        {
            for (var j = 0; j < flows.GetLength(1); j++)
            {
                map[0, i, j] += flows[i, j];
                map[bank, i, j] += flows[i, j];
            }
        }
    }
}
