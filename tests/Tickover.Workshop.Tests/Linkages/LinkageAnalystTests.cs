using CsCheck;
using Tickover.Physics.Flow;
using Tickover.Workshop.Linkages;
using Tickover.Workshop.Linkages.Parts;

namespace Tickover.Workshop.Tests.Linkages;

public sealed class LinkageAnalystTests
{
    private static readonly LinkageLimits Limits = new();

    [Fact]
    public void A_linkage_that_fits_is_left_alone()
    {
        var analysis = LinkageAnalyst.Of(LinkageSamples.Right);

        Assert.Empty(analysis.Equalised.Moves);
        Assert.Equal(0, analysis.RestDegrees, 1e-6);
        Assert.All(analysis.HeldOffDegrees, d => Assert.Equal(0, d, 1e-4));
        Assert.Equal("They open alike", analysis.Advice[0].Heading);
    }

    [Fact]
    public void One_rod_set_wrongly_by_whole_steps_is_set_back_by_as_many() =>
        Gen.Select(Gen.Int[2, 5], Gen.Int[1, 4], Gen.Bool).Sample((link, steps, longer) =>
        {
            var adjuster = LinkageAdjuster.Of(LinkageSamples.Right).Single(a => a.Kind is LinkageAdjusterKind.Rod && a.Index == link);
            // An eighth of a turnbuckle may hide in the limits; two do not.
            var wrong = (longer ? 1 : -1) * Math.Max(2, steps) * adjuster.Step;

            var moves = LinkageAnalyst.Of(adjuster.Set(LinkageSamples.Right, wrong)).Equalised.Moves;

            var move = Assert.Single(moves);
            Assert.Equal(adjuster.Name, move.Adjuster.Name);
            Assert.Equal(-wrong, move.More, 1e-9);
            return true;
        }, iter: 24);

    [Fact]
    public void The_samples_come_within_their_limits_in_whole_steps()
    {
        foreach (var linkage in new[] { LinkageSamples.Osprey, LinkageSamples.Tern })
        {
            var analysis = LinkageAnalyst.Of(linkage);

            Assert.True(analysis.Worst.OffIdle > Limits.OffIdlePart && analysis.Worst.Idle > Limits.IdlePart);
            Assert.True(analysis.Equalised.Worst.OffIdle <= Limits.OffIdlePart && analysis.Equalised.Worst.Idle <= Limits.IdlePart);
            Assert.All(analysis.Equalised.Moves, m => Assert.Equal(Math.Round(m.More / m.Adjuster.Step), m.More / m.Adjuster.Step, 1e-9));
        }
    }

    [Fact]
    public void The_osprey_is_told_of_its_bank_rod_and_the_tern_of_its_coupling()
    {
        Assert.Equal("Shorten left bank rod by five eighths of a turn", LinkageMoveWords.Act(LinkageAnalyst.Of(LinkageSamples.Osprey).Equalised.Moves[0]));
        Assert.StartsWith("Turn the screw of rear coupling 1⅛ turns", LinkageMoveWords.Act(LinkageAnalyst.Of(LinkageSamples.Tern).Equalised.Moves[0]), StringComparison.Ordinal);
    }

    [Fact]
    public void A_late_coupling_leaves_its_spindle_on_the_stop_and_holds_the_others_off()
    {
        var analysis = LinkageAnalyst.Of(LinkageSamples.Tern);

        // Front 0.2° ahead, rear 1.3° behind the middle one: degree for degree.
        Assert.Equal([1.5, 1.3, 0], analysis.HeldOffDegrees.ToArray(), (a, b) => Math.Abs(a - b) < 1e-6);
        Assert.True(analysis.RestDegrees > 0);
        Assert.Equal("middle", analysis.Names[analysis.Reference]);
        Assert.Contains(analysis.Advice, a => a.Words.Contains("only rear sits on its stop", StringComparison.Ordinal));
    }

    [Fact]
    public void Who_meets_the_full_stop_first_holds_the_others_short()
    {
        var analysis = LinkageAnalyst.Of(LinkageSamples.Tern);

        Assert.Equal((TravelEnd.FullStop, "front"), (analysis.End, analysis.EndsAt));
        Assert.Equal([0, 0.2, 1.5], [.. analysis.Reach.Select(r => r.ShortByDegrees)], (double a, double b) => Math.Abs(a - b) < 1e-6);
    }

    [Fact]
    public void Little_pedal_travel_is_said_to_be_short_at_the_floor()
    {
        var analysis = LinkageAnalyst.Of(LinkageSamples.Right with { PedalTravelDegrees = 20 });

        Assert.Equal(TravelEnd.Floor, analysis.End);
        Assert.All(analysis.Reach, r => Assert.True(r.ShortByDegrees > 20));
        Assert.Contains(analysis.Advice, a => a.Words.StartsWith("The pedal meets the floor first", StringComparison.Ordinal));
    }

    [Fact]
    public void Air_against_the_mean_is_that_of_the_open_areas()
    {
        var (moment, _) = LinkageAnalyst.At(LinkageSamples.Osprey, 0.3);
        var plate = new ThrottlePlate { BoreMetres = 0.040, ClosedAngleRadians = double.DegreesToRadians(8), SpindleDiameterMetres = 0.008 };
        var areas = moment.Plates.Select(p => plate.OpenArea(double.DegreesToRadians(p.Degrees))).ToArray();

        Assert.Equal([.. areas.Select(a => a / areas.Average() - 1)], [.. moment.Plates.Select(p => p.DeviationPart)], (double a, double b) => Math.Abs(a - b) < 1e-9);
    }

    [Fact]
    public void Play_is_what_longer_and_shorter_rods_would_do()
    {
        var analysis = LinkageAnalyst.Of(LinkageSamples.Right);
        var adjuster = LinkageAdjuster.Of(LinkageSamples.Right).Single(a => a.Name is "left bank rod");
        var longer = LinkageAnalyst.Of(adjuster.Set(LinkageSamples.Right, 0.1));

        var line = analysis.Play.Single(p => p.Rod is "left bank rod");
        Assert.Equal(longer.HeldOffDegrees[1], line.Degrees[1], 0.01);
        Assert.Equal(0, line.Degrees[3], 1e-12); // the other bank does not hang on it
    }

    [Fact]
    public void Wind_up_is_torque_times_length_over_stiffness()
    {
        // Tern, rear: 0.3 N m and 0.002 N m/° over 120 mm of its own brass spindle, and what it and its own spring ask of the middle one.
        var (moment, _) = LinkageAnalyst.At(LinkageSamples.Tern with { Links = [.. LinkageSamples.Tern.Links.Select(l => l is CouplingPart c ? c with { AheadDegrees = 0 } : l)] }, 0.5);
        var opened = moment.Plates[2].Degrees - 9.5;
        var own = 0.3 + 0.002 * opened;
        var stiffness = 37e9 * Math.PI / 32 * Math.Pow(0.008, 4);
        // Middle spindle: driven at 13; coupled at -90; own spring at -20.
        var middle = own * 0.103 + (0.3 + 0.002 * opened) * 0.033;
        // Rear spindle: driven at 90; spring at -75; far plate at -45.
        var expected = double.RadiansToDegrees((middle + own * 0.135) / stiffness);

        Assert.Equal(expected, moment.Plates[2].WindUpDegrees, 0.01);
    }

    [Fact]
    public void A_manifold_that_does_not_grow_changes_nothing_and_one_that_grows_parts_the_banks()
    {
        var still = LinkageAnalyst.Of(LinkageSamples.Right with { Warmth = new WarmthPart(0, 0, default) });
        var warm = LinkageAnalyst.Of(LinkageSamples.Right);

        Assert.All(still.Warm!, w => Assert.Equal(0, w.QuarterDegrees, 1e-9));
        Assert.Contains(warm.Warm!, w => Math.Abs(w.QuarterDegrees) > 0.1);
        Assert.Null(LinkageAnalyst.Of(LinkageSamples.Right with { Warmth = null }).Warm);
    }

    [Fact]
    public void A_lever_that_passes_its_rod_is_called_over_centre_and_a_danger()
    {
        // The pedal's short arm pushes the rod out until both are in line, then lets it come back.
        var linkage = LinkageSamples.Read("""
            {
              "format": "tickover-linkage-1", "name": "over", "pedal": { "shaft": "pedal", "travel": 110 },
              "shafts": [{ "name": "pedal", "at": [0, 0, 0], "axis": "up", "levers": [{ "name": "arm", "length": 20, "angle": -70 }] }],
              "carburettors": [{ "name": "one", "at": [150, -60, 0], "axis": "up", "opens": "anticlockwise", "bore": 40, "plates": [0], "seated": 8, "idle": 9, "full": 90,
                "levers": [{ "name": "arm", "length": 60, "angle": 90 }] }],
              "rods": [{ "name": "rod", "from": "pedal/arm", "to": "one/arm" }]
            }
            """);

        var analysis = LinkageAnalyst.Of(linkage);

        var over = Assert.Single(analysis.OverCentres, c => c.Kind is OverCentreKind.Over);
        Assert.Equal(("rod", "pedal/arm"), (over.Rod, over.Lever));
        var highest = analysis.Course.MaxBy(m => m.Plates[0].Degrees)!;
        Assert.Equal(highest.Down, over.Down, 0.03);
        Assert.True(analysis.Course[^1].Plates[0].Degrees < highest.Plates[0].Degrees - 1);
        Assert.True(analysis.Advice[0] is { IsDanger: true, Heading: "Goes over centre" });
    }

    [Fact]
    public void A_driven_lever_in_line_with_its_rod_ends_the_travel()
    {
        // Long driving, short driven lever: the driven one is pulled out straight.
        var linkage = LinkageSamples.Read("""
            {
              "format": "tickover-linkage-1", "name": "dead", "pedal": { "shaft": "pedal", "travel": 60 },
              "shafts": [{ "name": "pedal", "at": [0, 0, 0], "axis": "up", "levers": [{ "name": "arm", "length": 60, "angle": 60 }] }],
              "carburettors": [{ "name": "one", "at": [120, 0, 0], "axis": "up", "opens": "clockwise", "bore": 40, "plates": [0], "seated": 8, "idle": 9, "full": 90,
                "levers": [{ "name": "arm", "length": 20, "angle": 90 }] }],
              "rods": [{ "name": "rod", "from": "pedal/arm", "to": "one/arm" }]
            }
            """);

        var analysis = LinkageAnalyst.Of(linkage);

        Assert.Equal((TravelEnd.DeadPoint, "rod"), (analysis.End, analysis.EndsAt));
        Assert.Contains(analysis.OverCentres, c => c.Kind is OverCentreKind.Dead);
        Assert.All(analysis.Course, m => Assert.All(m.Plates, p => Assert.True(double.IsFinite(p.Degrees))));
    }

    [Theory]
    [InlineData(0.5, "half a turn")]
    [InlineData(-1.5, "1½ turns")]
    [InlineData(1, "1 turn")]
    [InlineData(0.125, "an eighth of a turn")]
    [InlineData(0.05, "0.05 turns")]
    public void Turns_are_said_as_a_hand_makes_them(double turns, string words)
    {
        var adjuster = new LinkageAdjuster { Kind = LinkageAdjusterKind.Rod, Name = "rod", Index = 0, Value = 100, Step = Math.Abs(turns), TurnsPerStep = Math.Abs(turns) };

        Assert.EndsWith($"rod by {words}", LinkageMoveWords.Act(new LinkageMove(adjuster, turns)), StringComparison.Ordinal);
    }
}
