using System.Globalization;
using System.Text;
using Tickover.Instruments.Logs;
using static Tickover.Instruments.Tests.Logs.WrittenLog;

namespace Tickover.Instruments.Tests.Logs;

/// <summary>Two engines one after the other under the same headings; and one engine twice, which is no doubt.</summary>
public sealed class PartsTests
{
    private const string Headings = "time_s,rpm,tps,map_kpa,lambda,ect,speed_kmh\n";

    [Fact]
    public void Another_engine_after_a_restart_of_the_clock_is_doubted_and_either_part_can_be_taken()
    {
        var log = Headings + Rows() + Rows(idle: 1.4, pressure: 12, gearing: 1.3, coldFor: 20);

        var whole = Read(log);
        var second = Read(log, new LogReadingSettings { Part = 2 });

        var doubt = Assert.Single(whole.Good().Doubts, d => d.Contains("two engines", StringComparison.Ordinal));
        Assert.Contains("the clock starts anew and the coolant falls from", doubt, StringComparison.Ordinal);
        Assert.Contains("idles at", doubt, StringComparison.Ordinal);
        Assert.Contains("kPa higher", doubt, StringComparison.Ordinal);
        Assert.Contains("top gear", doubt, StringComparison.Ordinal);
        Assert.Equal(2, whole.Parts.Count);
        Assert.Equal(1200, second.Good().Count);
        Assert.Equal(0, second.Good().Seconds[0]);
        Assert.DoesNotContain(second.Good().Doubts, d => d.Contains("two engines", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1.4, 0, 1, "idles at")]
    [InlineData(1, 12, 1, "kPa higher")]
    [InlineData(1, -12, 1, "kPa lower")]
    [InlineData(1, 0, 1.3, "top gear")]
    public void Each_thing_a_driver_cannot_change_is_enough(double idle, double pressure, double gearing, string said) =>
        Assert.Contains(Read(Headings + Rows() + Rows(idle, pressure, gearing)).Good().Doubts, d => d.Contains(said, StringComparison.Ordinal));

    [Fact]
    public void Headings_in_between_are_left_out_and_the_doubt_stays() =>
        Assert.Contains(Read(Headings + Rows() + Headings + Rows(idle: 1.4)).Good().Doubts, d => d.Contains("two engines", StringComparison.Ordinal));

    [Fact]
    public void The_same_engine_cold_again_after_a_stop_is_no_doubt()
    {
        var reading = Read(Headings + Rows() + Rows(coldFor: 40));

        Assert.Equal(2, reading.Parts.Count);
        Assert.DoesNotContain(reading.Good().Doubts, d => d.Contains("two engines", StringComparison.Ordinal));
    }

    [Fact]
    public void A_log_of_one_piece_has_no_parts_and_none_can_be_taken()
    {
        Assert.Empty(Read(Headings + Rows()).Parts);
        var reading = Read(Headings + Rows(), new LogReadingSettings { Part = 2 });
        Assert.Equal(LogRefusedBecause.TwoEngines, reading.Refusal!.Because);
        Assert.Contains("one piece", reading.Refusal.WhatWouldDo, StringComparison.Ordinal);
    }

    private static string Rows(double idle = 1, double pressure = 0, double gearing = 1, double coldFor = 0)
    {
        var text = new StringBuilder();
        foreach (var m in Drive())
        {
            var rpm = m.Tps < 3 ? m.Rpm * idle : m.Rpm;
            var coolant = m.T < coldFor ? 20 + m.T : m.Coolant;
            text.Append(CultureInfo.InvariantCulture, $"{m.T:0.00},{rpm:0},{m.Tps:0.0},{Math.Min(m.Map + pressure, 101):0.0},{m.Lambda:0.000},{coolant:0},{m.Road * gearing:0.0}\n");
        }

        return text.ToString();
    }
}
