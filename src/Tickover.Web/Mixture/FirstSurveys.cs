using Tickover.Workshop.Cars;

namespace Tickover.Web.Mixture;

/// <summary>Surveys the cars in the shop once the app is up, so that the first page finds them ready.</summary>
/// <param name="shelf">The cars.</param>
/// <param name="surveys">Where the surveys are kept.</param>
public sealed class FirstSurveys(ICarShelf shelf, SurveyCache surveys) : BackgroundService
{
    /// <inheritdoc/>
    protected override Task ExecuteAsync(CancellationToken stoppingToken) => Task.Run(
        () =>
        {
            foreach (var car in shelf.List().Select(s => s.Reading.Car).OfType<Car>())
            {
                if (stoppingToken.IsCancellationRequested)
                {
                    return;
                }

                surveys.Of(car);
            }
        },
        stoppingToken);
}
