using System.Globalization;

namespace Tickover.Workshop.Calibration;

/// <summary>Why readings are not fitted to, and what would do.</summary>
internal static class Refusal
{
    private const double Unmoved = 0.002;                // of λ: less than any real engine does over two regimes
    private const double Ignored = 0.3;                  // weight below which a reading hardly counts
    private const double TooMany = 0.4;                  // part of the readings
    private const double SpeedStep = 0.12;               // of the logarithm of the speed
    private const double OpeningStep = 3;                // degrees

    internal static List<string> OfRuns(IReadOnlyList<CalibrationRun> runs)
    {
        if (runs.Count == 0)
        {
            return ["No run was given. Give one log at the least, with the car as it was then."];
        }

        var first = runs[0].Car;
        return
        [
            .. runs.Where(r => r.Car.CylinderCount != first.CylinderCount || r.Car.Barrels.Count != first.Barrels.Count)
                .Select(r => $"{r.Name} belongs to another engine ({r.Car.Name}: {r.Car.CylinderCount} cylinders, {r.Car.Barrels.Count} barrels). Fit each car by itself."),
            .. runs.SelectMany(r => r.Points.Where(p => p.Bank is { } b && (b < 1 || b > first.Banks.Max())).Take(1).Select(p =>
                string.Create(CultureInfo.InvariantCulture, $"{r.Name} speaks of bank {p.Bank}, the car has {first.Banks.Max()}. Say which bank the probe was in."))),
        ];
    }

    internal static List<string> OfPoints(CalibrationWork work, CalibrationSettings how)
    {
        var reasons = new List<string>();
        var c = CultureInfo.InvariantCulture;
        if (work.Points.Count < how.FewestPoints)
        {
            var aside = work.WithoutOpening > 0 ? string.Create(c, $" {work.WithoutOpening} more have neither throttle nor manifold pressure.") : string.Empty;
            reasons.Add(string.Create(c, $"Only {work.Points.Count} steady readings; {how.FewestPoints} are needed.{aside} Hold each speed for five seconds or longer."));
            return reasons;
        }

        var places = work.Points.Select(p => ((int)(Math.Log(p.Point.SpeedRpm) / SpeedStep), (int)(p.ThrottleDegrees / OpeningStep))).Distinct().Count();
        if (places < how.FewestPlaces)
        {
            reasons.Add(string.Create(c, $"The readings stand at {places} place(s) of speed and throttle; {how.FewestPlaces} are needed. Add idle, a light cruise and a pull."));
        }

        var lambdas = work.Points.Select(p => p.Point.Lambda).ToArray();
        if (lambdas.Max() - lambdas.Min() < Unmoved)
        {
            reasons.Add(string.Create(c, $"λ is {lambdas[0]:0.000} at every reading: the sensor, its heater or the channel is stuck. Check it before the jets."));
        }

        return reasons;
    }

    internal static List<string> OfWeights(double[] weights)
    {
        var ignored = weights.Count(w => w < Ignored);
        return ignored <= TooMany * weights.Length
            ? []
            : [string.Create(CultureInfo.InvariantCulture, $"{ignored} of {weights.Length} readings contradict the rest. Check that the jets named are those fitted, that the fuel is right and the exhaust tight; then log again.")];
    }
}
