using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Advising;

namespace Tickover.Workshop.Tests.Visits.Advising;

public sealed class ShopBoardTests
{
    private static readonly DateTimeOffset Now = new(2026, 11, 25, 11, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Cars_stand_under_who_has_the_ball()
    {
        var board = ShopBoard.Of([Car(1, WaitsOn.Us), Car(2, WaitsOn.Owner), Car(3, WaitsOn.Parts), Car(4, WaitsOn.Clock)], Now);

        Assert.Equal("1|2|3 4", $"{Numbers(board.Us)}|{Numbers(board.Owner)}|{Numbers(board.PartsOrClock)}");
        Assert.All(board.Us.Concat(board.Owner).Concat(board.PartsOrClock), r => Assert.NotNull(r.Next));
    }

    [Fact]
    public void Oldest_promise_first_then_those_without_one_and_an_unsafe_car_above_all()
    {
        var visits = new[]
        {
            Car(1, WaitsOn.Us, due: 9), Car(2, WaitsOn.Us), Car(3, WaitsOn.Us, due: 2),
            Car(4, WaitsOn.Us) with { Findings = [new Finding { Severity = Severity.Unsafe }] },
            Car(5, WaitsOn.Us, due: 1) with { Findings = [new Finding { Severity = Severity.Unsafe, State = FindingState.PutRight }] },
        };

        Assert.Equal("4 5 3 1 2", Numbers(ShopBoard.Of(visits, Now).Us));
        Assert.Equal("4 5 3 1 2", Numbers(ShopBoard.Of(visits.Reverse(), Now).Us));
    }

    [Theory]
    [InlineData(FindingState.Open, Severity.Unsafe)]
    [InlineData(FindingState.Declined, Severity.Unsafe)]
    [InlineData(FindingState.PutRight, Severity.Watch)]
    public void What_can_hurt_counts_until_it_is_put_right(FindingState state, Severity worst)
    {
        var car = Car(1, WaitsOn.Us) with { Findings = [new Finding { Severity = Severity.Watch }, new Finding { Severity = Severity.Unsafe, State = state }] };

        Assert.Equal(worst, Assert.Single(ShopBoard.Of([car], Now).Us).Worst);
    }

    [Fact]
    public void Cars_that_have_left_are_not_in_the_shop() => Assert.Empty(ShopBoard.Of([Bench.Visit(new Visit { LeftOn = Bench.Today })], Now).Us);

    [Fact]
    public void A_stage_not_begun_is_said_to_be_next()
    {
        var car = Car(1, WaitsOn.Us) with { Stages = [new StageMark { Stage = Stage.Arrival, State = StageState.Done }] };

        Assert.Equal("Storage is next", Assert.Single(ShopBoard.Of([car], Now).Us).StageWords);
    }

    private static VisitRecord Car(int number, WaitsOn waitsOn, int? due = null) => Bench.Visit(new Visit
    {
        Number = number,
        WaitsOn = waitsOn,
        ArrivedOn = Bench.Today.AddDays(-5),
        DueOn = due is { } d ? Bench.Today.AddDays(d) : null,
    });

    private static string Numbers(IEnumerable<ShopRow> rows) => string.Join(' ', rows.Select(r => r.Record.Visit.Number));
}
