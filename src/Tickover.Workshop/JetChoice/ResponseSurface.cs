using Tickover.Workshop.Calibration;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.JetChoice;

/// <summary>
/// The mixture at every point that counts as a quadratic of the sizes, for one choke and tube: so that a hundred thousand sets cost as much as
/// a score of maps. docs/jet-choice.md. What it leaves out is shown by computing the sets chosen in full.
/// </summary>
internal sealed class ResponseSurface
{
    private static readonly (JetPart One, JetPart Other)[] Interacting =
    [
        (JetParts.MainJet, JetParts.AirCorrector), (JetParts.MainJet, JetParts.FloatLevel), (JetParts.AirCorrector, JetParts.FloatLevel),
        (JetParts.MainJet, JetParts.IdleJet), (JetParts.FloatLevel, JetParts.IdleJet),
        (JetParts.IdleJet, JetParts.IdleBleed), (JetParts.IdleJet, JetParts.Screw), (JetParts.IdleBleed, JetParts.Screw),
    ];

    private readonly Dictionary<JetPart, (double Middle, double Half)> _scale = [];
    private readonly Dictionary<JetPart, (double[] Straight, double[] Bent)> _own = [];
    private readonly Dictionary<(JetPart, JetPart), double[]> _pairs = [];
    private readonly double[] _middle;

    internal ResponseSurface(JetGround ground, JetCandidates candidates, (Car Car, JetSet Body) of, IForecast forecast, CancellationToken cancellation)
    {
        var factors = JetParts.All.Where(p => p != JetParts.Choke && candidates[p].Count > 1).ToList();
        foreach (var part in factors)
        {
            var (low, high) = (X(part, candidates[part][0]), X(part, candidates[part][^1]));
            _scale[part] = ((low + high) / 2, (high - low) / 2);
        }

        double[] At(params (JetPart Part, double Z)[] moved)
        {
            var set = of.Body;
            foreach (var part in factors)
            {
                var z = moved.Where(m => m.Part == part).Select(m => m.Z).FirstOrDefault();
                set = set.With(part, Math.Round(Size(part, z), 6));
            }

            var car = set.On(of.Car) ?? throw new InvalidOperationException($"the document of {of.Car.Name} refuses a size between two it takes");
            var map = ground.Read(forecast.Equivalence(car, cancellation), CalibrationGrid.Of(car));
            return [.. ground.Cells.Select(p => Math.Exp(-map[p]))];
        }

        _middle = At();
        foreach (var part in factors)
        {
            var (low, high) = (At((part, -1)), At((part, 1)));
            _own[part] = (
                [.. high.Zip(low, (h, l) => (h - l) / 2)],
                [.. high.Zip(low, (h, l) => (h + l) / 2).Zip(_middle, (m, c) => m - c)]);
        }

        foreach (var pair in Interacting.Where(p => _own.ContainsKey(p.One) && _own.ContainsKey(p.Other)))
        {
            var corner = At((pair.One, 1), (pair.Other, 1));
            _pairs[pair] = [.. corner.Select((y, c) => y - _middle[c] - Own(pair.One, 1, c) - Own(pair.Other, 1, c))];
        }
    }

    /// <summary>Adds what a part does by itself, at a size.</summary>
    internal void Add(double[] to, JetPart part, double size)
    {
        var z = Z(part, size);
        for (var c = 0; c < to.Length; c++)
        {
            to[c] += Own(part, z, c);
        }
    }

    /// <summary>Adds what two parts do together beyond each by itself; with the second at the end of its range.</summary>
    internal void Add(double[] to, JetPart one, double size, JetPart other, double otherZ)
    {
        if (_pairs.TryGetValue((one, other), out var together))
        {
            var z = Z(one, size) * otherZ;
            for (var c = 0; c < to.Length; c++)
            {
                to[c] += together[c] * z;
            }
        }
    }

    /// <summary>The whole of a set.</summary>
    internal double[] Whole(JetSet set)
    {
        var whole = Middle();
        for (var i = 0; i < JetParts.All.Count; i++)
        {
            Add(whole, JetParts.All[i], set.Sizes[i]);
            for (var k = 0; k < JetParts.All.Count; k++)
            {
                Add(whole, JetParts.All[i], set.Sizes[i], JetParts.All[k], Z(JetParts.All[k], set.Sizes[k]));
            }
        }

        return whole;
    }

    /// <summary>A fresh array with the middle of all ranges.</summary>
    internal double[] Middle() => (double[])_middle.Clone();

    /// <summary>A size as a part of its range, -1 to 1.</summary>
    internal double Z(JetPart part, double size) => _scale.TryGetValue(part, out var s) ? (X(part, size) - s.Middle) / s.Half : 0;

    private double Own(JetPart part, double z, int cell) => _own.TryGetValue(part, out var own) ? z * (own.Straight[cell] + z * own.Bent[cell]) : 0;

    private double Size(JetPart part, double z) => part.IsLength ? _scale[part].Middle + z * _scale[part].Half : Math.Exp(_scale[part].Middle + z * _scale[part].Half);

    private static double X(JetPart part, double size) => part.IsLength ? size : Math.Log(size);
}
