using System.Globalization;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Tests.Balance;

/// <summary>A visit in the stage Balance with its gates open, and a way to key in what a hand would.</summary>
internal sealed record Rounds(TestApp App, Id<Visit> Visit)
{
    public string Here => $"/visits/{Visit}/balance/rounds";

    public static async Task<Rounds> BeginAsync(TestApp app, string? sample = "tern-2800", bool mayRun = true)
    {
        var person = new Person { Name = "Ruth Amis", Initials = "RA" };
        var car = new CustomerCar { Name = "Larkfield on the bench", Slug = "bench" };
        var visit = new Visit { Car = car.Id, ArrivedOn = DateOnly.FromDateTime(DateTime.Now) };
        var document = sample is null ? null : await File.ReadAllTextAsync(Path.Combine(Repository.Samples, sample + ".car.json"));
        IReadOnlyList<RecordItem> items =
        [
            person, car, visit, .. document is null ? [] : new RecordItem[] { new CarDescription { Car = car.Id, Since = visit.ArrivedOn, Document = document } },
            .. mayRun ? new[] { Gate.BayReady, Gate.EngineMayRun, Gate.FitToTune }.Select(g => new SignOff { Visit = visit.Id, Gate = g, Person = person.Id, On = visit.ArrivedOn, Override = "for the test" }) : [],
        ];
        Assert.True((await app.Record.KeepAsync(new Act { Key = Guid.NewGuid(), Items = items, Words = "a car to balance", Visit = visit.Id })).IsKept);
        return new Rounds(app, visit.Id);
    }

    public async Task<VisitRecord> LookAsync() => (await App.Record.VisitAsync(Visit))!;

    /// <summary>Keys figures in one after the other, each for the barrel the page asks for.</summary>
    public async Task ReadAsync(string? chosen, params IReadOnlyList<double> figures)
    {
        var page = chosen is null ? Here : $"{Here}?read={chosen}";
        foreach (var figure in figures)
        {
            using var kept = await App.PostFormAsync(page, Here, ("value", figure.ToString(CultureInfo.InvariantCulture)), ("rpm", "900"), ("moment", "AsFound"));
            Assert.Equal(System.Net.HttpStatusCode.Found, kept.StatusCode);
        }
    }
}
