using System.Text;
using CsCheck;
using Tickover.Instruments.Logs;
using static Tickover.Instruments.Tests.Logs.WrittenLog;

namespace Tickover.Instruments.Tests.Logs;

/// <summary>Bad input: a plain answer, never an exception, and always an end.</summary>
public sealed class RefusalTests
{
    private static readonly TimeSpan LongEnough = TimeSpan.FromSeconds(20);

    public static TheoryData<string, string, LogRefusedBecause, string> Bad => new()
    {
        { "empty", "", LogRefusedBecause.Empty, "empty" },
        { "blanks", " \r\n\t\r\n ", LogRefusedBecause.Empty, "blanks" },
        { "prose", "Dear sir,\nthe car runs badly, as it always did.\nYours", LogRefusedBecause.NoTable, "no table" },
        { "headings only", "time,rpm,tps,lambda\n", LogRefusedBecause.NoTable, "no table" },
        { "no mixture", Text("time,rpm,tps,oil temp", m => string.Create(C, $"{m.T:0.0},{m.Rpm:0},{m.Tps:0.0},{m.Coolant:0}")), LogRefusedBecause.ColumnMissing, "λ or AFR" },
        { "no load", Text("time,rpm,lambda", m => string.Create(C, $"{m.T:0.0},{m.Rpm:0},{m.Lambda:0.000}")), LogRefusedBecause.ColumnMissing, "throttle or manifold pressure" },
        { "two engines", Text("time,rpm1,rpm2,tps,lambda", m => string.Create(C, $"{m.T:0.0},{m.Rpm:0},{2500 + 800 * Math.Cos(m.T):0},{m.Tps:0.0},{m.Lambda:0.000}")), LogRefusedBecause.TwoEngines, "two engines" },
        { "two tables", Plain(300) + Text("rpm;lambda;time", m => string.Create(C, $"{m.Rpm:0};{m.Lambda:0.000};{m.T:0.0}"), 300).Replace(';', ','), LogRefusedBecause.TwoEngines, "another table" },
        { "stuck sensor", Text("time,rpm,tps,lambda", m => string.Create(C, $"{m.T:0.0},{m.Rpm:0},{m.Tps:0.0},0.98")), LogRefusedBecause.NothingMoves, "same in every row" },
        { "stuck pick-up", Text("time,rpm,tps,lambda", m => string.Create(C, $"{m.T:0.0},3000,{m.Tps:0.0},{m.Lambda:0.000}")), LogRefusedBecause.NothingMoves, "engine speed" },
        { "volts", Text("time,rpm,tps,lambda", m => string.Create(C, $"{m.T:0.0},{m.Rpm:0},{m.Tps:0.0},{5 * (m.Lambda - 0.4):0.000}")), LogRefusedBecause.Implausible, "cannot be mixture" },
        { "commas between commas", Text("time,rpm,tps,lambda", m => string.Create(C, $"{m.T:0.0},{m.Rpm:0},{m.Tps:0.0},{m.Lambda:0.000}").Replace('.', ',')), LogRefusedBecause.CommasBetweenCommas, "decimal commas" },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void Says_what_is_missing_and_what_would_do(string name, string text, LogRefusedBecause because, string words)
    {
        var reading = Read(text);

        Assert.True(reading.Log is null, name);
        Assert.Equal(because, reading.Refusal!.Because);
        Assert.Contains(words, reading.Refusal.Missing);
        Assert.NotEmpty(reading.Refusal.WhatWouldDo);
    }

    [Fact]
    public void Binary_junk_and_spreadsheets_are_no_text()
    {
        var junk = new byte[100_000];
        new Random(7).NextBytes(junk);

        Assert.Equal(LogRefusedBecause.NotText, Read(junk).Refusal!.Because);
        Assert.Contains("spreadsheet", Read([.. "PK\x03\x04"u8, .. junk]).Refusal!.Missing);
    }

    [Fact]
    public void A_thousand_columns_are_no_trouble()
    {
        var more = string.Join(',', Enumerable.Range(0, 995).Select(i => $"channel {i}"));
        var cells = string.Join(',', Enumerable.Range(0, 995).Select(i => (i % 7).ToString(C)));

        var reading = Read(Text($"time,{more},rpm,tps,map,lambda", m => string.Create(C, $"{m.T:0.0},{cells},{m.Rpm:0},{m.Tps:0.0},{m.Map:0.0},{m.Lambda:0.000}")));

        Assert.Equal(1200, reading.Good().Count);
        Assert.Equal(1000, reading.Columns.Count);
    }

    [Fact]
    public void A_column_told_that_is_not_there_is_named()
    {
        var reading = Read(Plain(), new LogReadingSettings { Columns = [new ColumnChoice { Column = "boost", Quantity = LogQuantity.ManifoldPressure }] });

        Assert.Equal(LogRefusedBecause.ColumnUnknown, reading.Refusal!.Because);
        Assert.Contains("map_kpa", reading.Refusal.WhatWouldDo);
    }

    [Fact]
    public void A_stream_that_fails_is_said()
    {
        using var broken = new BrokenStream(Encoding.UTF8.GetBytes(Plain(60_000)), 1_500_000);

        Assert.Equal(LogRefusedBecause.Unreadable, LogReader.Read(broken).Refusal!.Because);
    }

    /// <summary>Mutations of good logs: bytes changed, taken out, put in, doubled, cut; and texts of pieces that mean something to the reader.</summary>
    [Fact]
    public void Whatever_comes_the_reader_answers_and_ends()
    {
        var seeds = new[] { Plain(80), Plain(80).Replace(',', ';').Replace('.', ','), Text("t;AFR1;AFR2;n (1/min);vac (mmHg)", m => string.Create(C, $"00:{m.T:00.0};{14 * m.Lambda:0.0};---;{m.Rpm:0};{m.Map:0}"), 80) };
        var mutation = Gen.Select(Gen.Int[0, 4], Gen.Int[0, 4000], Gen.Int[1, 200], Gen.Byte);
        var mutated = Gen.Select(Gen.Int[0, seeds.Length - 1], mutation.Array[0, 12]).Select((which, changes) =>
            changes.Aggregate(Encoding.UTF8.GetBytes(seeds[which]).ToList(), Mutate).ToArray());
        string[] pieces = ["time", "rpm", "lambda", "tps", "map", ",", ";", "\t", "\n", "\r", "\"", "1", "2.5", "3,5", "-", "---", "NaN", "#", "(kPa)", "psi", "1e308", "12:30:00", "2026-05-03T10:00:00Z", "\0", "λ", "°C", " ", "99999999999999999999"];
        var pieced = Gen.Int[0, pieces.Length - 1].Select(i => pieces[i]).Array[0, 400].Select(p => Encoding.UTF8.GetBytes(string.Concat(p)));

        Gen.OneOf(mutated, pieced, Gen.Byte.Array[0, 600]).Sample(Ends, iter: 3000);
    }

    private static List<byte> Mutate(List<byte> bytes, (int Kind, int At, int Length, byte Value) change)
    {
        var at = bytes.Count == 0 ? 0 : change.At % bytes.Count;
        var length = Math.Min(change.Length, bytes.Count - at);
        switch (change.Kind)
        {
            case 0 when bytes.Count > 0:
                bytes[at] = change.Value;
                break;
            case 1:
                bytes.RemoveRange(at, length);
                break;
            case 2:
                bytes.Insert(at, change.Value);
                break;
            case 3:
                bytes.InsertRange(at, bytes.GetRange(at, length));
                break;
            default:
                bytes.RemoveRange(at, bytes.Count - at);
                break;
        }

        return bytes;
    }

    private static void Ends(byte[] bytes)
    {
        using var source = new CancellationTokenSource(LongEnough);
        using var stream = new MemoryStream(bytes);

        var reading = LogReader.Read(stream, cancellation: source.Token);

        Assert.True(reading.Log is null != reading.Refusal is null);
        if (reading.Log is { } log)
        {
            Assert.All(log.Seconds.Zip(log.Seconds.Skip(1)), p => Assert.True(p.Second > p.First));
            Assert.Equal(log.Count, log.SpeedRpm.Count);
            Assert.All(log.Lambdas, l => Assert.Equal(log.Count, l.Lambda.Count));
            Assert.True(reading.RowsKept <= reading.Rows);
        }
    }

    private sealed class BrokenStream(byte[] bytes, int breaksAt) : MemoryStream(bytes)
    {
        public override int Read(Span<byte> buffer)
        {
            // Over an array of its own: the base class calls this one again.
            var part = new byte[buffer.Length];
            var read = Read(part, 0, part.Length);
            part.AsSpan(0, read).CopyTo(buffer);
            return read;
        }

        public override int Read(byte[] buffer, int offset, int count) => Position > breaksAt ? throw new IOException("the card was pulled out") : base.Read(buffer, offset, count);
    }
}
