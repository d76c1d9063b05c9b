using System.Collections.Concurrent;
using Tickover.Workshop.Cars;
using Tickover.Workshop.JetChoice;
using Tickover.Workshop.Mixture;

namespace Tickover.Bench.Road;

/// <summary>A car of the study: described as a sample, in truth something else, and come in with the wrong jets.</summary>
internal sealed class VirtualCar
{
    private const double ChokeWrong = 0.3;
    private static readonly ConcurrentDictionary<string, (Car Car, OperatingWeights Weights, SurveyAir Air)> Bases = new(StringComparer.Ordinal);
    private readonly Dictionary<string, TruthMap> _maps = new(StringComparer.Ordinal);
    private readonly SurveyAir _air;

    /// <summary>Makes one.</summary>
    /// <param name="number">Its number; with the seed it decides everything.</param>
    /// <param name="seed">Seed of the study.</param>
    /// <param name="cars">Where cars are read from.</param>
    internal VirtualCar(int number, int seed, StudyCars cars)
    {
        Name = Samples.Names[number % Samples.Names.Length];
        (Sample, Weights, _air) = Bases.GetOrAdd(cars.FileOf(Name), _ => (cars.Read(Name), new OperatingWeights(cars.Read(Name)), new SurveyAir()));
        Seed = unchecked(seed * 7919 + number);
        var draw = new Draw(Seed);
        Banks = Sample.Banks.Max();
        Traits = TruthTraits.Drawn(draw, Banks);
        AsArrived = WithWrongJets(Sample, draw);
    }

    /// <summary>Which sample it is described as.</summary>
    internal string Name { get; }

    internal int Seed { get; }

    internal int Banks { get; }

    internal Car Sample { get; }

    internal OperatingWeights Weights { get; }

    internal TruthTraits Traits { get; }

    /// <summary>The car as described, with the jets it came in with.</summary>
    internal Car AsArrived { get; }

    /// <summary>The mixture it really has with the jets of a described car; kept.</summary>
    internal TruthMap Truth(Car fitted)
    {
        if (!_maps.TryGetValue(Key(fitted), out var map))
        {
            _maps.Add(Key(fitted), map = TruthMap.Of(fitted, Sample, Traits, _air));
        }

        return map;
    }

    /// <summary>Weighted part of the operating points in target.</summary>
    internal double Score(Car fitted) => Weights.InTarget(Truth(fitted), Banks);

    /// <summary>λ of all banks at hot idle with a gas analyser, ±0.015.</summary>
    internal double IdleReading(Car fitted, Draw draw)
    {
        const double speed = 900, opening = 1.5, analyser = 0.015;
        var grid = new SurveyGrid { SpeedsRpm = [800, speed], ThrottleDegrees = [0.8, opening, 2.5, 90 - Sample.Barrels[0].Figures.Si("barrel.closedAngle") * 180 / Math.PI] };
        return TruthMap.Of(fitted, Sample, Traits, _air, grid).Lambda(0, speed, opening) * Math.Exp(analyser * draw.Normal());
    }

    /// <summary>The sizes fitted, in the order of <see cref="JetParts.All"/>.</summary>
    internal static double[] Sizes(Car fitted) => [.. JetParts.All.Select(p => p.Fitted(fitted))];

    /// <summary>A car with a size changed by steps of its series, kept inside it; null where the car does not take it.</summary>
    internal static Car? Changed(Car fitted, JetPart part, double steps)
    {
        var size = Math.Clamp(part.Fitted(fitted) + steps * part.Series.Step, part.Series.Smallest, part.Series.Largest);
        return CarDocument.Change(fitted, [KeyValuePair.Create(part.Key, part.Text(Math.Round(size, 4)))]).Car;
    }

    private static string Key(Car fitted) => string.Join(' ', Sizes(fitted)) + fitted.Barrels[0].EmulsionTube;

    private static Car WithWrongJets(Car sample, Draw draw)
    {
        (JetPart Part, double Steps)[] wrong =
        [
            (JetParts.MainJet, draw.Steps(1, 3)),
            (JetParts.IdleJet, draw.Steps(1, 2)),
            (JetParts.AirCorrector, draw.Steps(0, 3)),
            (JetParts.Choke, draw.Chance(ChokeWrong) ? draw.Steps(1, 2) : 0),
        ];
        return wrong.Where(w => w.Steps != 0).Aggregate(sample, (car, w) => Changed(car, w.Part, w.Steps) ?? car);
    }
}
