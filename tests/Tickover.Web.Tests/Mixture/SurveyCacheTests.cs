using Tickover.Web.Mixture;
using Tickover.Workshop.Cars;

namespace Tickover.Web.Tests.Mixture;

public sealed class SurveyCacheTests
{
    private static readonly Car Gannet = CarDocument.Read(Repository.Sample("gannet-1500")).Car!;

    [Fact]
    public void The_same_document_is_surveyed_once()
    {
        var cache = new SurveyCache();

        Assert.Same(cache.Of(Gannet), cache.Of(CarDocument.Read(Repository.Sample("gannet-1500")).Car!));
    }

    [Fact]
    public void A_trial_is_on_the_grid_of_the_fitted_car()
    {
        var cache = new SurveyCache();
        var changed = CarDocument.Change(Gannet, "barrel.mainJet", "125").Car!;

        var trial = cache.Trial(Gannet, changed);

        Assert.Equal(cache.Of(Gannet).Map.Grid.SpeedsRpm, trial.Map.Grid.SpeedsRpm);
        Assert.Same(trial, cache.Trial(Gannet, changed));
        Assert.NotSame(trial, cache.Of(Gannet));
    }

    [Fact]
    public async Task Many_who_ask_at_once_get_one_survey()
    {
        var cache = new SurveyCache();

        var surveys = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(() => cache.Of(Gannet))));

        Assert.All(surveys, s => Assert.Same(surveys[0], s));
    }
}
