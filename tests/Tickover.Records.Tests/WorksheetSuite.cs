using Tickover.Workshop.Visits;

namespace Tickover.Records.Tests;

/// <summary>Worksheets of a car over its visits, on whatever database the record lies.</summary>
/// <param name="home">Gives each test a record of its own.</param>
public abstract class WorksheetSuite(RecordHome home)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_worksheet_holds_on_later_visits_of_the_car_and_not_on_earlier_ones()
    {
        using var open = await OpenRecord.BeginAsync(home);
        var before = new Visit { Car = open.Car.Id, ArrivedOn = open.Visit.ArrivedOn.AddYears(-1) };
        var after = new Visit { Car = open.Car.Id, ArrivedOn = open.Visit.ArrivedOn.AddYears(1) };
        await open.KeepAsync("visits", before, after);
        await open.KeepAsync("sheet", new Worksheet { Visit = open.Visit.Id, Form = "tickover-plan-1", Document = "{ }", Name = "first" });
        await open.KeepAsync("anew", new Worksheet { Visit = open.Visit.Id, Form = "tickover-plan-1", Document = "{ }", Name = "second" });

        Assert.Equal("second", (await open.LookAsync()).SheetOf("tickover-plan-1")!.Name);
        Assert.Equal("second", (await open.Store.VisitAsync(after.Id, Cancellation))!.SheetOf("tickover-plan-1")!.Name);
        Assert.Null((await open.Store.VisitAsync(before.Id, Cancellation))!.SheetOf("tickover-plan-1"));
        Assert.Equal(ActEnding.Refused, (await open.KeepAsync("empty", new Worksheet { Visit = open.Visit.Id, Form = "tickover-plan-1" })).Ending);

        await open.UndoAsync();
        Assert.Equal("first", (await open.LookAsync()).SheetOf("tickover-plan-1")!.Name);
    }
}
