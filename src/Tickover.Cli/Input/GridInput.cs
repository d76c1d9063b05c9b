using System.Globalization;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Cli.Input;

/// <summary>Reads the speeds and openings asked for and holds them against the car.</summary>
internal static class GridInput
{
    private const double DegreesPerRadian = 180 / Math.PI;
    private const double RightAngle = 90;

    /// <summary>Reads the grid.</summary>
    /// <param name="car">The car.</param>
    /// <param name="rpm">Speeds as typed, or null for the usual ones.</param>
    /// <param name="throttle">Openings as typed, or null for the usual ones.</param>
    /// <returns>The grid, or a complaint.</returns>
    public static Answer<SurveyGrid> Read(Car car, string? rpm, string? throttle)
    {
        var usual = MixtureSurvey.DefaultGrid(car);
        var speeds = rpm is null ? Numbers(usual.SpeedsRpm) : NumberList.Speeds.Read(rpm);
        var openings = throttle is null ? Numbers(usual.ThrottleDegrees) : NumberList.Openings.Read(throttle);
        var complaint = speeds.Complaint ?? openings.Complaint ?? BeyondWideOpen(car, openings.Value![^1]);
        return complaint is not null
            ? Answer<SurveyGrid>.No(complaint)
            : new SurveyGrid { SpeedsRpm = speeds.Value!, ThrottleDegrees = openings.Value! };
    }

    /// <summary>Complains about an opening that this car's plates do not reach.</summary>
    /// <param name="car">The car.</param>
    /// <param name="degrees">Opening from seated, degrees.</param>
    /// <returns>Null, or a complaint.</returns>
    public static string? BeyondWideOpen(Car car, double degrees)
    {
        const double Rounding = 1e-6;
        var wideOpen = RightAngle - car.Barrels.Max(b => b.Figures.Si("barrel.closedAngle")) * DegreesPerRadian;
        return degrees > wideOpen + Rounding
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"--throttle {degrees:0.##}: the plates of {car.Name} stand wide open at {wideOpen:0.#}° from seated. Ask for 0.1 to {wideOpen:0.#} degrees.")
            : null;
    }

    private static Answer<IReadOnlyList<double>> Numbers(IReadOnlyList<double> usual) => usual.ToArray();
}
