using System.Diagnostics;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Web.Mixture;

/// <summary>Puts together what a state of the pages shows: the one use case behind pages and API.</summary>
/// <param name="surveys">Surveys already made.</param>
public sealed class BenchDesk(SurveyCache surveys)
{
    // Speeds and openings are shown no finer than this; the point looked at is the point shown.
    private const double ShownRpm = 10;
    private const double ShownDegrees = 0.5;

    /// <summary>Opens a car in a state.</summary>
    /// <param name="shelved">A document that could be read.</param>
    /// <param name="query">The state.</param>
    /// <returns>The bench, or null where the car has no such barrel.</returns>
    public Bench? Open(ShelvedCar shelved, BenchQuery query)
    {
        ArgumentNullException.ThrowIfNull(shelved);
        ArgumentNullException.ThrowIfNull(query);
        var car = shelved.Reading.Car ?? throw new ArgumentException("The document has faults and no car.", nameof(shelved));
        if (car.Barrels.FirstOrDefault(b => b.Number == query.Barrel) is not { } barrel)
        {
            return null;
        }

        var survey = surveys.Of(car);
        var furthest = FurthestPoint.Of(survey.Map, barrel.Number);
        var first = FirstLook.Of(survey.Map, barrel.Number, furthest);
        var at = query with { Rpm = query.Rpm ?? Rounded(first.Rpm, ShownRpm), Throttle = query.Throttle ?? Rounded(first.Degrees, ShownDegrees) };
        return WithTrial(new Bench
        {
            Shelved = shelved,
            Query = at,
            Fitted = car,
            Barrel = barrel,
            FittedMap = survey.Map,
            FittedPoint = survey.Explain(barrel.Number, at.Rpm.Value, at.Throttle.Value),
            Furthest = furthest,
        });
    }

    /// <summary>The survey of a car as it is.</summary>
    /// <param name="car">The car.</param>
    /// <returns>The survey.</returns>
    public MixtureSurvey Survey(Car car) => surveys.Of(car);

    /// <summary>Applies a list of changes to a car.</summary>
    /// <param name="car">The car as it is.</param>
    /// <param name="barrel">The barrel looked at.</param>
    /// <param name="query">The state with its changes.</param>
    /// <returns>The changed car, or the faults.</returns>
    public static CarReading Apply(Car car, CarBarrel barrel, BenchQuery query)
    {
        ArgumentNullException.ThrowIfNull(query);
        return CarDocument.Change(car, query.Changes.Select(c => KeyValuePair.Create(PathOf(barrel, c.Part, query.OneBarrel), c.Value)));
    }

    private static double Rounded(double value, double step) => Math.Max(step, Math.Round(value / step) * step);

    private static string PathOf(CarBarrel barrel, string part, bool one)
    {
        ArgumentNullException.ThrowIfNull(barrel);
        return one ? $"{barrel.Path}.{part}" : $"barrel.{part}";
    }

    private Bench WithTrial(Bench bench)
    {
        if (bench.Query.Changes.Count == 0)
        {
            return bench with { Query = bench.Query with { Show = MapShown.Fitted } };
        }

        var started = Stopwatch.GetTimestamp();
        var reading = Apply(bench.Fitted, bench.Barrel, bench.Query);
        if (reading.Car is not { } car)
        {
            return bench with { TrialFaults = reading.Faults, Query = bench.Query with { Show = MapShown.Fitted } };
        }

        var survey = surveys.Trial(bench.Fitted, car);
        return bench with
        {
            Trial = car,
            TrialMap = survey.Map,
            TrialPoint = survey.Explain(bench.Barrel.Number, bench.Query.Rpm!.Value, bench.Query.Throttle!.Value),
            TrialMilliseconds = Stopwatch.GetElapsedTime(started).TotalMilliseconds,
        };
    }
}
