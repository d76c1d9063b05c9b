using Tickover.Physics.Sending;

namespace Tickover.Physics.Tests.Sending;

public sealed class RoadTests
{
    [Theory]
    [InlineData(2, 0.1)]
    [InlineData(-3, 0.2)]
    [InlineData(1, -0.15)]
    public void On_a_slope_the_surface_stands_by_the_textbook_angle(double along, double grade)
    {
        var road = RoadSample.On(along, 0, grade, 0);

        var slope = Math.Atan(grade);
        var inCar = Math.Atan(road.AheadMetresPerSecondSquared / road.UpMetresPerSecondSquared);
        Assert.Equal(along * Math.Cos(slope) / (RoadSample.Gravity + along * Math.Sin(slope)), Math.Tan(inCar - slope), 1e-12);
    }

    [Fact]
    public void A_camber_can_cancel_a_bend()
    {
        // Left-hand bend with the left wheels lower by as much as it pulls.
        var road = RoadSample.On(0, 2, 0, -2 / RoadSample.Gravity);

        Assert.Equal(0, road.LeftMetresPerSecondSquared, 1e-12);
        Assert.True(road.UpMetresPerSecondSquared > RoadSample.Gravity);
    }

    [Fact]
    public void A_steady_circle_pulls_by_speed_squared_over_radius()
    {
        var trace = Manoeuvres.SteadyCircle(20, Manoeuvres.SteadyRadiusMetres, toLeft: true, 20, 5, 10, 0.01);

        Assert.Equal(4, trace.Samples.Max(s => s.LeftMetresPerSecondSquared), 1e-9);
        Assert.Equal(35, trace.DurationSeconds, 0.1);
        Assert.Equal(0, trace.Samples[0].LeftMetresPerSecondSquared);
    }

    [Fact]
    public void Two_roundabouts_pull_the_same_one_way_and_the_other()
    {
        var trace = Manoeuvres.Roundabouts(8, 16, 1.5, 10, 0.01);

        Assert.Equal(-4, trace.Samples.Min(s => s.LeftMetresPerSecondSquared), 1e-9);
        Assert.Equal(4, trace.Samples.Max(s => s.LeftMetresPerSecondSquared), 1e-9);
        Assert.Equal(0, trace.Samples.Sum(s => s.LeftMetresPerSecondSquared), 1);
    }

    [Fact]
    public void A_lane_change_ends_in_the_lane_it_began_in()
    {
        foreach (var course in new[] { LaneChange.Severe(1.7), LaneChange.Avoidance(1.7) })
        {
            var trace = course.Drive(course.UsualSpeedMetresPerSecond, 0.001, 1, 1);
            var (speed, aside, most) = (0.0, 0.0, 0.0);
            foreach (var s in trace.Samples)
            {
                speed += s.LeftMetresPerSecondSquared * 0.001;
                aside += speed * 0.001;
                most = Math.Max(most, aside);
            }

            Assert.Equal(course.ShiftMetres, most, 0.01);
            Assert.Equal(0, aside, 0.02);
            Assert.Equal(0, speed, 1e-3);
        }
    }

    [Fact]
    public void A_driver_slows_for_the_next_stretch_and_stands_as_long_as_asked()
    {
        var trace = DrawnRoad.Drive([new RoadSegment { LengthMetres = 200, SpeedMetresPerSecond = 15 }, new RoadSegment { StandsSeconds = 5 }], 0.01);

        Assert.InRange(trace.DurationSeconds, 200 / 15.0 + 5, 200 / 15.0 + 14);
        Assert.True(trace.Samples.Min(s => s.AheadMetresPerSecondSquared) >= -DrawnRoad.GentleMetresPerSecondSquared - 1e-9);
        Assert.Equal(RoadSample.Level, trace.Samples[^1]);
    }

    [Fact]
    public void Traces_refuse_what_no_instrument_reads()
    {
        Assert.Throws<ArgumentException>(() => new RoadTrace(0.01, [RoadSample.Level]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new RoadTrace(0.01, [RoadSample.Level, new RoadSample(double.NaN, 0, 9.8)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new RoadTrace(0.01, [RoadSample.Level, new RoadSample(0, 0, -1)]));
    }
}
