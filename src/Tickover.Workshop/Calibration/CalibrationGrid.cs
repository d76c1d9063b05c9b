using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Workshop.Calibration;

/// <summary>The grid a calibration computes on: every other speed of the map, all openings. Between speeds the mixture hardly bends.</summary>
internal static class CalibrationGrid
{
    internal static SurveyGrid Of(Car car)
    {
        var fine = MixtureSurvey.DefaultGrid(car);
        var speeds = fine.SpeedsRpm.Where((_, i) => i % 2 == 0).ToList();
        if (fine.SpeedsRpm.Count % 2 == 0)
        {
            speeds.Add(fine.SpeedsRpm[^1]);
        }

        return fine with { SpeedsRpm = speeds };
    }
}
