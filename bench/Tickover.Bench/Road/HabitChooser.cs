using Tickover.Workshop.Calibration;
using Tickover.Workshop.Cars;
using Tickover.Workshop.JetChoice;

namespace Tickover.Bench.Road;

/// <summary>The habit: one circuit a run, two steps at first, one step back (trade reference 3.6); the mixture screws set at hot idle each time.</summary>
/// <remarks>Common practice. It knows no model. A circuit that has gone one way and back is left at the better of the two sizes.</remarks>
internal sealed class HabitChooser(VirtualCar car) : IChooser
{
    private const double MiddleOfIdle = 0.915;            // of 0.88 to 0.95
    private const double ScrewStep = 0.25;                // turns
    private readonly Draw _draw = new(car.Seed + 1);
    private readonly HashSet<JetPart> _settled = [];
    private readonly Dictionary<JetPart, (int Way, bool Back)> _moves = [];

    /// <inheritdoc/>
    public RoadChoice Choose(Car now, IReadOnlyList<CalibrationRun> runs)
    {
        var table = new LogTable(runs[^1].Points, car.Sample.Engine.Si("engine.peakPowerSpeed") * 60 / (2 * Math.PI));
        while (table.Asks(_settled) is var (part, richer))
        {
            if (Moved(now, part, richer) is { } next)
            {
                return new RoadChoice(WithScrewsSet(next), null);
            }

            _settled.Add(part);
        }

        return new RoadChoice(null, null);
    }

    // two steps the first time and as long as it keeps asking the same way; one step once it asks back, and after that it stands
    private Car? Moved(Car now, JetPart part, int richer)
    {
        var turned = _moves.TryGetValue(part, out var last) && last.Way != richer;
        if (last.Back)
        {
            return null;
        }

        _moves[part] = (richer, turned);
        // a bigger corrector is leaner, and so is a lower level; a level is moved by one setting at a time
        var steps = (turned || part == JetParts.FloatLevel ? 1 : 2) * (part == JetParts.AirCorrector || part == JetParts.FloatLevel ? -richer : richer);
        var next = VirtualCar.Changed(now, part, steps);
        return next is null || part.Fitted(next) == part.Fitted(now) ? null : next;
    }

    // screws out or in at hot idle with the gas analyser, until it reads the middle
    private Car WithScrewsSet(Car fitted)
    {
        var best = fitted;
        var off = double.MaxValue;
        for (var turns = 0.5; turns <= 5; turns += 2 * ScrewStep)
        {
            var trial = CarDocument.Change(fitted, [KeyValuePair.Create(JetParts.Screw.Key, JetParts.Screw.Text(turns))]).Car;
            if (trial is not null && Math.Abs(Math.Log(car.IdleReading(trial, _draw) / MiddleOfIdle)) is var now && now < off)
            {
                (best, off) = (trial, now);
            }
        }

        return best;
    }
}
