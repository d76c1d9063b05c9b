using Tickover.Workshop.Cars;
using Tickover.Workshop.StripDown;
using Tickover.Workshop.StripDown.Build;

namespace Tickover.Workshop.Tests.StripDown;

public sealed class BuildPlannerTests
{
    private static readonly string Car = Repository.Sample("tern-2800");

    [Fact]
    public void Plates_stand_where_the_model_passes_the_idle_air_and_the_screw_gives_the_mixture()
    {
        var answer = BuildPlanner.Of(Read("\"idleAir\": 3.9, \"rods\": [{ \"where\": \"a\", \"length\": 84.2 }, { \"where\": \"b\", \"length\": 84.25 }]").Sheet!);

        Assert.Equal(IdleFinder.Of(CarDocument.Read(Car).Car!, 850, 3.9 / 3600)!.PlateDegrees!.Value, answer.PlateDegrees, 1e-9);
        Assert.InRange(answer.RodMillimetres, 0.05, 1);
        Assert.NotNull(answer.ScrewTurns);
        Assert.False(answer.IsNo);
        Assert.Contains(answer.Settings, s => s is { What: "By-pass screws", Value: "shut" });
    }

    [Fact]
    public void A_rod_of_another_length_comes_first_and_is_told_in_idle_air()
    {
        var answer = BuildPlanner.Of(Read("\"idleAir\": 3.9, \"rodArm\": 30, \"rods\": [{ \"where\": \"a\", \"length\": 84.2 }, { \"where\": \"b\", \"length\": 84.2 }, { \"where\": \"c\", \"length\": 84.6 }]").Sheet!);

        Assert.True(answer.IsNo);
        Assert.Equal("c", Assert.Single(answer.Rods, r => r.IsOutside).Rod.Where);
        Assert.True(answer.Rods[2].Share > 0.1);
        Assert.Contains("rods to one length first: c", answer.Verdict, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"lambda\": 9", "lambda: 9")]
    [InlineData("\"rods\": [{ \"where\": \"a\" }]", "rods[0]: Its name or its length is missing")]
    [InlineData("\"idleAir\": 39", "idleRpm: By the model no plate")]
    public void What_cannot_be_used_is_said(string member, string said)
    {
        var (sheet, faults) = Read(member);

        Assert.Null(sheet);
        Assert.Contains(faults, f => $"{f.Path}: {f.Problem}".Contains(said, StringComparison.Ordinal));
    }

    private static (BuildSheet? Sheet, IReadOnlyList<Fault> Faults) Read(string members) =>
        BuildDocument.Read($"{{ \"format\": \"tickover-build-1\", \"idleRpm\": 850, {members}, \"car\": {Car} }}");
}
